import { contractorSheet } from "./contractor-sheet.ts";
import type { Sheet } from "./sheet.ts";

/** Every paper that travels, in the order of the work. */
export const sheets: readonly Sheet[] = [
  {
    name: "contractor",
    title: "Contractor's sheet",
    reader: "for the concrete contractor",
    draw: contractorSheet,
  },
];

export const sheetNames: readonly string[] = sheets.map((sheet) => sheet.name);
