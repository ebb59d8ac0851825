import type { Assessment, PlacedBase } from "@floorworthy/assess";
import { type Mark, type SetOut, setOut } from "@floorworthy/assess/setout";
import { shimPlan } from "@floorworthy/assess/shims";
import type { Rect } from "@floorworthy/engine/geometry";
import { capital, isUnable, toBase, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { describePlan } from "../plan/describe-plan.ts";
import { planGround } from "../plan/plan-ground.ts";
import { anchorMarks } from "../print/anchor-marks.ts";
import { printFeet, printLength } from "../print/measure.ts";
import { evenNotes } from "./even-notes.ts";
import { bodyOf, framed, rule, words } from "./frame.ts";
import { holeSection } from "./hole-section.ts";
import {
  beforeNote,
  holeNote,
  orderNote,
  shimNote,
  squareNote,
  stopNote,
  torqueNote,
  writeDownNote,
} from "./installer-notes.ts";
import type { Note } from "./note.ts";
import { plateKey } from "./plate-key.ts";
import { scaleBar } from "./scale-bar.ts";
import { setNotes } from "./set-notes.ts";
import type { SheetOptions } from "./sheet.ts";
import { setTable } from "./table.ts";

const titles = {
  "may-drill": "Setting out, drilling and torque",
  "marks-only": "MARKS ONLY: nothing is drilled yet",
} as const;

/** The installer's page: plan from two walls, one hole in section, every hole, the order of work. Unable where nothing may be set out. */
export const installerSheet = (
  job: Job,
  assessment: Assessment,
  { date, paper }: SheetOptions,
): readonly Drawing[] | Unable => {
  const made = setOut(job, assessment);
  if (isUnable(made)) return made;
  const lies = "on-its-side";
  const box = bodyOf({ paper, lies });
  const body = bodyItems(job, assessment, made, box);
  if (!body) return unable("installer's sheet", "The plan or the words do not fit one readable page.");
  return [
    framed(
      {
        paper,
        lies,
        title: titles[made.drilling],
        sentence: made.drilling === "marks-only" ? `Do not drill. ${made.before[0] ?? ""}` : assessment.sentence,
        aside: "To scale when printed at 100 %. Written figures govern.",
        description: `${describePlan(job, assessment)} ${made.holes.length} holes from the ${made.walls.x} and the ${made.walls.y}.`,
        cells: [
          { share: 60, cells: [{ caption: "Job", words: [job.title, ...(job.place ? [job.place] : [])] }] },
          {
            share: 46,
            cells: [
              {
                caption: "Lift, from its maker's page",
                words: [job.lift.name, ...(job.lift.edition ? [job.lift.edition] : [])],
              },
            ],
          },
          {
            share: 42,
            cells: [
              { caption: "Set out by, date", words: [] },
              { caption: "Drilled by, date", words: [] },
            ],
          },
          {
            share: 42,
            cells: [
              { caption: "Torque wrench, checked on", words: [] },
              { caption: "Anchor product, lot", words: job.installation?.lot ? [job.installation.lot] : [] },
            ],
          },
          {
            share: 42,
            cells: [
              { caption: "Scales", words: [body.scales] },
              { caption: "Drawn", words: [`${date}, sheet 1 of 1`] },
            ],
          },
        ],
      },
      body.items,
    ),
  ];
};

const notesOf = (job: Job, made: SetOut, marks: ReadonlyMap<string, string>): readonly Note[] => {
  const shims = shimWords(job);
  return made.drilling === "marks-only"
    ? [beforeNote(made), orderNote(made), squareNote(made, job), stopNote()]
    : [
        beforeNote(made),
        orderNote(made),
        holeNote(made, job),
        torqueNote(made, marks),
        squareNote(made, job),
        ...(shims.length ? [shimNote(shims)] : []),
        stopNote(),
        writeDownNote(),
      ];
};

const shimWords = (job: Job): string[] => {
  const { bases, limit } = shimPlan(job);
  const planned = bases.filter((base) => base.bedding !== "not-measured");
  const inUnits = (mm: number): string => printLength(mm, job.units);
  return [
    ...planned.map(
      ({ side, corners, bedding }) =>
        `${side} base${bedding === "shims" || bedding === "as-it-stands" ? "" : ", more than shims alone may carry"}: ${corners.map(({ id, stack }) => `${id} ${stack.height === 0 ? "none" : inUnits(stack.height)}`).join(", ")}.`,
    ),
    planned.length < bases.length ? "Level the floor at all four corners of each base before the column stands." : "",
    `Shims beside every anchor. More than ${inUnits(toBase(limit.value, limit.unit))} without grout: ask the maker.`,
  ]
    .filter((w) => w !== "")
    .map(capital);
};

const bodyItems = (
  job: Job,
  assessment: Assessment,
  made: SetOut,
  box: Rect,
): { items: readonly Item[]; scales: string } | undefined => {
  const split = box.x0 + (box.x1 - box.x0) * 0.45;
  const tableEnd = box.x0 + (split - box.x0) * 0.67;
  const { bases } = assessment.layout;
  const marks = anchorMarks(bases);
  const table = holeTable(job, bases, marks, made.holes, { x0: box.x0 + 2, x1: tableEnd, y0: 0, y1: 0 });
  const tableTop = box.y1 - table.height - 2;
  const plan = planGround(job, assessment, { x0: box.x0 + 1, y0: box.y0 + 4.5, x1: split - 1, y1: tableTop - 8 });
  if (!plan) return undefined;
  const tall = made.drilling === "may-drill" ? 74 : 0;
  const half = split + (box.x1 - split) * 0.48;
  const section = tall
    ? holeSection(made.hole, job.units, { x0: split + 1, y0: box.y0 + 5, x1: half - 1, y1: box.y0 + tall - 1 })
    : undefined;
  const gap = 3;
  const middle = (box.x1 + split + gap) / 2;
  const columns = section
    ? [
        { x0: half + gap, x1: box.x1 - gap, y0: box.y0 + 1.5, y1: box.y0 + tall - 1 },
        { x0: split + gap, x1: middle - gap / 2, y0: box.y0 + tall + 1.5, y1: box.y1 - 1.5 },
        { x0: middle + gap / 2, x1: box.x1 - gap, y0: box.y0 + tall + 1.5, y1: box.y1 - 1.5 },
      ]
    : [
        { x0: split + gap, x1: middle - gap / 2, y0: box.y0 + 1.5, y1: box.y1 - 1.5 },
        { x0: middle + gap / 2, x1: box.x1 - gap, y0: box.y0 + 1.5, y1: box.y1 - 1.5 },
      ];
  const [first, ...rest] = columns;
  const all = notesOf(job, made, marks);
  const notes = section ? splitNotes(all, first!, rest) : evenNotes(all, columns, 3.2);
  if (!notes) return undefined;
  const { x, y } = made.walls;
  return {
    scales: `Plan ${plan.written}${section ? `; hole ${section.written}` : ""}`,
    items: [
      plan,
      words("captions", box.x0 + 2, box.y0 + 3.6, `Plan, ${plan.written}. From the ${x} and the ${y}`, 2.3, {
        lettering: "bold",
      }),
      ...scaleBar({ x: box.x0 + 2, y: tableTop - 3.5 }, plan.scale, job.units),
      ...table.items(tableTop),
      ...keys(bases, marks, { x0: tableEnd + 1, x1: split - 1, y0: tableTop - 1, y1: box.y1 - 1 }),
      rule(split, box.y0, split, box.y1),
      ...(section
        ? [
            section,
            words("captions", split + 2, box.y0 + 3.6, `One hole, ${section.written}`, 2.3, { lettering: "bold" }),
            rule(half, box.y0, half, box.y0 + tall),
            rule(split, box.y0 + tall, box.x1, box.y0 + tall),
          ]
        : []),
      ...notes.items,
    ],
  };
};

/** Every base from above with the names of its holes, two in a row. */
const keys = (
  bases: readonly PlacedBase[],
  marks: ReadonlyMap<string, string>,
  { x0, x1, y0, y1 }: Rect,
): readonly Item[] => {
  const rows = Math.max(1, Math.ceil(bases.length / 2));
  const [width, height] = [(x1 - x0) / Math.min(2, Math.max(1, bases.length)), (y1 - y0) / rows];
  return bases.map((base, i) => {
    const zone = { x0: x0 + (i % 2) * width, y0: y0 + Math.floor(i / 2) * height };
    return plateKey(base, marks, { ...zone, x1: zone.x0 + width, y1: zone.y0 + height });
  });
};

/** What belongs to the hole stands beside its section; the rest below. */
const splitNotes = (all: readonly Note[], beside: Rect, below: readonly Rect[]) => {
  const isHole = (n: Note): boolean => n.heading.startsWith("Each hole") || n.heading === "Torque";
  const hole = setNotes(all.filter(isHole), [beside]);
  const rest = setNotes(
    all.filter((n) => !isHole(n)),
    below,
  );
  return hole && rest
    ? { items: [...hole.items, ...rest.items.map(renumbered)], size: Math.min(hole.size, rest.size) }
    : undefined;
};

/** Tags of the second set of notes follow the first, so that each block is heard as one. */
const renumbered = (item: Item): Item => ({
  ...item,
  tag: item.tag.replace(/^note-(\d+)/, (_, n: string) => `note-${Number(n) + 20}`),
});

/** The holes in two columns: the first half of the bases, and the rest. */
const holeTable = (
  job: Job,
  bases: readonly PlacedBase[],
  marks: ReadonlyMap<string, string>,
  holes: readonly Mark[],
  box: Rect,
) => {
  const first = new Set(bases.slice(0, Math.ceil(bases.length / 2)).map(({ side }) => side));
  const left = holes.filter(({ side }) => first.has(side));
  const right = holes.filter(({ side }) => !first.has(side));
  const named = (mark: Mark | undefined): string => (mark ? (marks.get(mark.id) ?? mark.id) : "");
  const far = (mark: Mark | undefined, axis: "x" | "y"): string => (mark ? printFeet(mark.at[axis], job.units) : "");
  const rows = Array.from({ length: Math.max(left.length, right.length) }, (_, i) => [
    named(left[i]),
    far(left[i], "x"),
    far(left[i], "y"),
    named(right[i]),
    far(right[i], "x"),
    far(right[i], "y"),
  ]);
  const unit = job.units === "si" ? ", mm" : "";
  const of = (y0: number) =>
    setTable(
      {
        tag: "note-holes",
        size: 2,
        rowHeight: 0,
        columns: [
          { heading: "Hole", share: 7 },
          { heading: `left wall${unit}`, share: 15, align: "end" },
          { heading: `back wall${unit}`, share: 15, align: "end" },
          { heading: "Hole", share: 7 },
          { heading: `left wall${unit}`, share: 15, align: "end" },
          { heading: `back wall${unit}`, share: 15, align: "end" },
        ],
        rows,
      },
      { ...box, y0 },
    );
  return { height: of(0).bottom, items: (y: number) => of(y).items };
};
