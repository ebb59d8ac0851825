import type { Assessment } from "@floorworthy/assess";
import type { Rect } from "@floorworthy/engine/geometry";
import type { Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { anchorMarks } from "../print/anchor-marks.ts";
import { plateKey } from "../sheets/plate-key.ts";
import { standsLoose } from "../sheets/refusal.ts";
import type { SheetOptions } from "../sheets/sheet.ts";
import { mayRecord, tooMuch } from "./may-record.ts";
import { page, type Section, stacked } from "./upright.ts";
import { chosen, lengthOf, torqueOf, turnOf } from "./words.ts";

const name = "anchor log";
const met = {
  nothing: "nothing",
  bar: "BAR",
  void: "VOID",
  tube: "TUBE",
  conduit: "CONDUIT",
  tendon: "TENDON",
} as const;

/** Visits that have a column of their own; later ones go on a new sheet. */
const VISITS = 3;

export const anchorLog = (job: Job, assessment: Assessment, options: SheetOptions): readonly Drawing[] | Unable =>
  standsLoose(name, job) ??
  mayRecord(name, job, assessment) ??
  page(
    job,
    options,
    {
      title: "Anchor log",
      sentence: `${askedOf(job)} One line per anchor as it is set (stud: above the plate; turn: of the nut from snug). At every visit: how far the nut turned to its torque, and the stud.`,
      lies: "on-its-side",
      cells: [
        { caption: "Anchor product, lot", words: job.installation?.lot ? [job.installation.lot] : [] },
        { caption: "Torque wrench, checked on", words: job.installation?.wrench ? [job.installation.wrench] : [] },
        { caption: "Written by, date", words: [] },
      ],
    },
    (box) => withKeys(job, assessment, box),
  ) ??
  tooMuch(name);

const KEY = 42;

/** The log, and below it which hole is which where there is room. */
const withKeys = (job: Job, assessment: Assessment, box: Rect): readonly Item[] | undefined => {
  const { bases } = assessment.layout;
  const log = (y1: number, size: number) => stacked([logOf(job, assessment)], { ...box, y1 }, "note-log", size);
  const short = bases.length > 0 ? log(box.y1 - KEY, 2.15) : undefined;
  const marks = anchorMarks(bases);
  const wide = Math.min(60, (box.x1 - box.x0 - 4) / Math.max(1, bases.length));
  const keys = bases.map((base, i) => {
    const x0 = box.x0 + 4 + i * wide;
    return plateKey(base, marks, { x0, x1: x0 + wide - 6, y0: box.y1 - KEY + 3, y1: box.y1 });
  });
  return short ? [...short, ...keys] : (log(box.y1, 2.15) ?? log(box.y1, 1.8));
};

const askedOf = ({ lift, ...job }: Job): string => {
  const whole = { lift, ...job } as Job;
  const { product, torque } = lift.anchors;
  return [
    `Hole ${lengthOf(product.holeDiameter, whole) ?? "____"}, depth ${lengthOf(product.holeDepth, whole) ?? "____"}`,
    `set to ${lengthOf(product.nominalEmbedment, whole) ?? "____"}`,
    `torque ${torqueOf(torque, whole) ?? "____"}.`,
  ].join(", ");
};

const logOf = (job: Job, { layout }: Assessment): Section => {
  const visits = job.visits.slice(-VISITS);
  const marks = anchorMarks(layout.bases);
  const anchors = layout.bases.flatMap((base) => base.anchors.map(({ id }) => id));
  const rows = anchors.length > 0 ? anchors : Array.from({ length: 10 }, () => "");
  return {
    heading: "",
    rowHeight: 5,
    columns: [
      { heading: "Anchor", share: 10 },
      { heading: "Hole depth", share: 13 },
      { heading: "Met", share: 12 },
      { heading: "Clean", share: 9 },
      { heading: "Stud", share: 12 },
      { heading: "Torque", share: 14 },
      { heading: "Turn", share: 10 },
      { heading: "By", share: 8 },
      ...Array.from({ length: VISITS }, (_, i) => [
        { heading: `turn, ${visits[i]?.date ?? "on ______"}`, share: 17 },
        { heading: "stud", share: 12 },
      ]).flat(),
      { heading: "Seen", share: 24 },
    ],
    rows: rows.map((id) => {
      const hole = job.installation?.holes.find((h) => h.anchor === id);
      return [
        marks.get(id) ?? id,
        lengthOf(hole?.depth, job) ?? "",
        chosen(hole?.met, met) ?? "",
        chosen(hole?.clean, { yes: "yes", no: "NO" }) ?? "",
        lengthOf(hole?.projection, job) ?? "",
        torqueOf(hole?.torque, job) ?? "",
        turnOf(hole?.turned) ?? "",
        "",
        ...Array.from({ length: VISITS }, (_, i) => {
          const reading = visits[i]?.readings.find((r) => r.anchor === id);
          return [turnOf(reading?.turned) ?? "", lengthOf(reading?.projection, job) ?? ""];
        }).flat(),
        visits.flatMap((v) => v.readings.filter((r) => r.anchor === id && r.note).map((r) => r.note!)).at(-1) ?? "",
      ];
    }),
  };
};
