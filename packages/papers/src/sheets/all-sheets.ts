import { torqueTrendSheet } from "../charts/torque-trend.ts";
import { recordSheets } from "../records/index.ts";
import { contractorSheet } from "./contractor-sheet.ts";
import { cureSheet } from "./cure-card.ts";
import { drillCard } from "./drill-card/drill-card.ts";
import { installerSheet } from "./installer-sheet.ts";
import { jointSheet } from "./joint-sheet.ts";
import { placingSheet } from "./placing-plan.ts";
import { readyMixSheet } from "./ready-mix-sheet.ts";
import { referralSheet } from "./referral-sheet/referral-sheet.ts";
import type { Sheet } from "./sheet.ts";
import { torqueCardSheet } from "./torque-card.ts";

/** Every paper that travels, in the order of the work. */
export const sheets: readonly Sheet[] = [
  drillCard,
  placingSheet,
  {
    name: "contractor",
    title: "Contractor's sheet",
    reader: "for the concrete contractor",
    draw: contractorSheet,
  },
  jointSheet,
  readyMixSheet,
  cureSheet,
  {
    name: "installer",
    title: "Installer's sheet",
    reader: "for the people who set out, drill and torque",
    draw: installerSheet,
  },
  ...recordSheets,
  torqueCardSheet,
  torqueTrendSheet,
  referralSheet,
];

export const sheetNames: readonly string[] = sheets.map((sheet) => sheet.name);
