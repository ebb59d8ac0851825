import type { Assessment } from "@floorworthy/assess";
import { anchoring } from "@floorworthy/assess/facts";
import type { Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing } from "../drawing/drawing.ts";
import type { SheetOptions } from "../sheets/sheet.ts";
import { tooMuch } from "./may-record.ts";
import { page, type Section, stacked } from "./upright.ts";
import { torqueOf } from "./words.ts";

const name = "inspection sheet";

export const inspectionSheet = (job: Job, assessment: Assessment, options: SheetOptions): readonly Drawing[] | Unable =>
  page(
    job,
    options,
    {
      title: "Yearly inspection",
      sentence:
        "For a qualified inspector, after the maker's own list, which comes first. One thing not in order: lower, unload, tag, and say so below.",
      lies: "upright",
      cells: [
        { caption: "Inspector, qualification", words: [] },
        { caption: "Date; next one due", words: [] },
      ],
    },
    (box) =>
      stacked(sectionsOf(job, assessment), box, "note-inspection", 2) ??
      stacked(sectionsOf(job, assessment), box, "note-inspection", 1.8),
  ) ?? tooMuch(name);

const sectionsOf = (job: Job, assessment: Assessment): readonly Section[] => {
  const count = assessment.layout.bases.reduce((sum, base) => sum + base.anchors.length, 0);
  const torque = torqueOf(job.lift.anchors.torque, job);
  const last = job.visits.at(-1);
  const loose = anchoring(job.lift) === "loose";
  return [
    checks("Papers and labels", [
      "Manual at the lift; data plate and certification label readable",
      `Installation record, ${loose ? "" : "anchor log, "}last report; corrections closed`,
      "Operators trained and named; warning labels in place",
    ]),
    loose
      ? checks("Feet and their places", [
          "Feet flat and whole, wheels free, no rust-through",
          "Places marked on the floor, clear of joints, cracks, edges and drains",
        ])
      : checks("Anchors and base plates", [
          `All anchors there${count > 0 ? `: ${count}` : ""}; none spins, none bent; threads beyond the nut`,
          `Torque ${torque ?? "per the maker"} reached by hand; turn of every nut in the log${last ? ` (last visit ${last.date})` : ""}`,
          "Studs no higher than in the log",
          "Shims tight and unmoved; grout whole; plates flat, no rust-through",
        ]),
    checks("Floor", [
      "Cracks round the bases: none new, none wider or longer than the photographs",
      `No spall, no hollow sound within a foot of ${loose ? "where a foot stands" : "an anchor"}, no step at joint or pad edge`,
      loose
        ? "No settlement where the feet stand; no standing water"
        : "No settlement: levels at the base corners as on the record; no standing water",
      ...(job.floor.cracks.length > 0 ? [`Recorded cracks: ${job.floor.cracks.map((c) => c.name).join(", ")}`] : []),
    ]),
    checks("Columns, arms, locks", [
      `Columns plumb both ways, empty and loaded${loose ? "" : "; overhead beam bolted"}`,
      "Welds, columns and carriages without crack, bend or wear",
      "Arms, pins, pads, restraints: lock at every step, let go when lowered",
      "Locks drop together; both carriages level at every step",
    ]),
    checks("Drive", [
      "Cables or chains: wear, stretch, ends, pulleys; equalising set",
      "Hydraulics: no leak, level, hoses, cylinder seats; no sinking under load",
      "Controls, limit, overhead stop, wiring; lowers by hand as in the manual",
    ]),
    checks("Run", [
      "Up and down empty",
      `With a vehicle: a foot up and shaken, then to the top; ${loose ? "every foot" : "every base"} watched`,
    ]),
    {
      heading: "Not in order, what was done about it, by whom, when",
      rowHeight: 7,
      columns: [{ heading: "", share: 1 }],
      rows: [[""], [""], [""]],
    },
  ];
};

const checks = (heading: string, rows: readonly string[]): Section => ({
  heading,
  rowHeight: 4.4,
  columns: [
    { heading: "", share: 58 },
    { heading: "in order", share: 9 },
    { heading: "NOT", share: 7 },
    { heading: "remark", share: 26 },
  ],
  rows: rows.map((row) => [row, "", "", ""]),
});
