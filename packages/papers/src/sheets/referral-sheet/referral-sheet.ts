import type { Assessment } from "@floorworthy/assess";
import { type Referral, referral } from "@floorworthy/assess/referral";
import type { Rect } from "@floorworthy/engine/geometry";
import { type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../../drawing/drawing.ts";
import { describePlan } from "../../plan/describe-plan.ts";
import { planGround } from "../../plan/plan-ground.ts";
import { bodyOf, framed, rule } from "../frame.ts";
import type { Note } from "../note.ts";
import { scaleBar } from "../scale-bar.ts";
import { setNotes } from "../set-notes.ts";
import type { Sheet, SheetOptions } from "../sheet.ts";
import type { Cell } from "../title-block.ts";
import { loadsTable } from "./loads-table.ts";
import { factNotes, questionNotes } from "./pack-notes.ts";

const FOOT = 15;

const blank = (caption: string): Cell => ({ caption, words: [] });

const cells = (job: Job, date: string): readonly { share: number; cells: readonly Cell[] }[] => [
  {
    share: 60,
    cells: [{ caption: "Job", words: [job.title, ...[job.customer, job.place].filter((w) => w !== undefined)] }],
  },
  { share: 44, cells: [{ caption: "Lift, from its maker's page", words: [job.lift.name] }] },
  { share: 36, cells: [blank("Sent to (engineer)"), blank("On")] },
  { share: 36, cells: [blank("Customer told by"), blank("On, customer's initials")] },
  { share: 26, cells: [{ caption: "Drawn", words: [date, "sheet 1 of 1"] }] },
];

/** Notes with at most so many lines each; what is left out is said. */
const shortened = (notes: readonly Note[], most: number): readonly Note[] =>
  notes.map((given) =>
    given.lines.length > most
      ? { ...given, lines: [...given.lines.slice(0, most), `And ${given.lines.length - most} more in the data file.`] }
      : given,
  );

const notesIn = (notes: readonly Note[], columns: readonly Rect[]): readonly Item[] | undefined => {
  for (const most of [99, 16, 12, 9, 7, 5, 4, 3, 2, 1]) {
    const set = setNotes(shortened(notes, most), columns);
    if (set) return set.items;
  }
  return undefined;
};

const inColumns = (box: Rect, count: number): readonly Rect[] => {
  const gap = 3;
  const width = (box.x1 - box.x0 - gap * (count + 1)) / count;
  return Array.from({ length: count }, (_, i) => {
    const x0 = box.x0 + gap + i * (width + gap);
    return { x0, x1: x0 + width, y0: box.y0 + 1.5, y1: box.y1 - 1.5 };
  });
};

const body = (pack: Referral, job: Job, assessment: Assessment, box: Rect): readonly Item[] | undefined => {
  for (const height of [92, 84, 76, 68]) {
    const bottom = box.y0 + height;
    const split = box.x1 - 104;
    const zone = { x0: split + 1, y0: box.y0 + 1, x1: box.x1 - 1, y1: bottom - 5 };
    const plan = planGround(job, assessment, zone);
    const question = notesIn(
      questionNotes(pack),
      inColumns({ ...box, x1: plan ? split : box.x1, y1: bottom }, plan ? 1 : 2),
    );
    const loads = loadsTable(pack, job.units, { ...box, y0: bottom });
    const facts = notesIn(factNotes(pack), inColumns({ ...box, y0: loads.bottom }, 3));
    if (!question || !facts) continue;
    return [
      ...(plan ? [plan, ...scaleBar({ x: split + 3, y: bottom - 2.4 }, plan.scale, job.units)] : []),
      ...(plan ? [rule(split, box.y0, split, bottom)] : []),
      ...question,
      rule(box.x0, bottom, box.x1, bottom),
      ...loads.items,
      rule(box.x0, loads.bottom, box.x1, loads.bottom),
      ...facts,
    ];
  }
  return undefined;
};

const draw = (job: Job, assessment: Assessment, { date, paper }: SheetOptions): readonly Drawing[] | Unable => {
  const pack = referral(job, assessment);
  const frame = { paper, lies: "upright", foot: FOOT } as const;
  const items = body(pack, job, assessment, bodyOf(frame));
  if (!items) return unable("referral", "There is too much to say for one page; take the data file.");
  return [
    framed(
      {
        ...frame,
        title: "Referral to a licensed engineer",
        sentence: pack.sentence,
        aside: "Written figures govern.",
        description: `${describePlan(job, assessment)} ${pack.question.asked.join(" ")} ${pack.notVerified.join(" ")}`,
        cells: cells(job, date),
      },
      items,
    ),
  ];
};

/** The engineer's pack on one upright page; given for every job, above all under a stop. */
export const referralSheet: Sheet = {
  name: "referral",
  title: "Referral to a licensed engineer",
  reader: "for the licensed engineer, with the data file",
  draw,
};
