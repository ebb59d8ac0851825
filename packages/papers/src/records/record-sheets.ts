import type { Sheet } from "../sheets/sheet.ts";
import { anchorLog } from "./anchor-log.ts";
import { inspectionSheet } from "./inspection-sheet.ts";
import { installationRecord } from "./installation-record.ts";
import { outOfServiceTag } from "./out-of-service-tag.ts";
import { ownerCard } from "./owner-card.ts";

/** What is kept with the lift for its life, in the order of the work. */
export const recordSheets: readonly Sheet[] = [
  {
    name: "anchor-log",
    title: "Anchor log",
    reader: "for the installer, and whoever looks at the nuts",
    draw: anchorLog,
  },
  { name: "installation", title: "Installation record", reader: "for the owner's file", draw: installationRecord },
  { name: "owner-card", title: "Owner's card", reader: "for the owner, at the lift", draw: ownerCard },
  { name: "inspection", title: "Yearly inspection", reader: "for a qualified inspector", draw: inspectionSheet },
  { name: "out-of-service", title: "Out-of-service tag", reader: "for everybody near the lift", draw: outOfServiceTag },
];

export const recordNames: readonly string[] = recordSheets.map((sheet) => sheet.name);
