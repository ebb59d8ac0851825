import type { Assessment } from "@floorworthy/assess";
import { planSurvey, type SurveyPlan, tapeWords, termWords } from "@floorworthy/assess/survey";
import type { Rect } from "@floorworthy/engine/geometry";
import { isUnable, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../../drawing/drawing.ts";
import { describePlan } from "../../plan/describe-plan.ts";
import { planGround } from "../../plan/plan-ground.ts";
import { bodyOf, framed, rule, words } from "../frame.ts";
import { type Note, note } from "../note.ts";
import { scaleBar } from "../scale-bar.ts";
import { setNotes } from "../set-notes.ts";
import type { Sheet, SheetOptions } from "../sheet.ts";
import { setTable } from "../table.ts";
import type { Cell } from "../title-block.ts";
import { BIT_HEIGHT, bitFigure } from "./bit-figure.ts";
import { holesPart, ringed } from "./holes-part.ts";

const FOOT = 12;
const PLAN_WIDTH = 128;

const blank = (caption: string): Cell => ({ caption, words: [] });

const cells = (job: Job, date: string, scale: string): readonly { share: number; cells: readonly Cell[] }[] => [
  { share: 60, cells: [{ caption: "Job", words: [job.title, ...(job.place ? [job.place] : [])] }] },
  { share: 46, cells: [{ caption: "Lift", words: [job.lift.name] }] },
  { share: 42, cells: [blank("Drilled by")] },
  { share: 26, cells: [blank("Date")] },
  { share: 36, cells: [{ caption: "Plan, drawn", words: [`${scale}; ${date}`] }] },
];

const lookFirst = ({ first }: SurveyPlan): Note =>
  note(
    "Look first: no tick, no hole",
    [
      ...first.map(({ what, how }) => `${what}: ${how}.`),
      "Utility locating service called in time; everything it marked is on this plan.",
      "The slab's owner agrees.",
    ],
    "box",
  );

const besideThePlan = (plan: SurveyPlan): readonly Note[] => [
  lookFirst(plan),
  note("Stop at once and drill no further", plan.stops),
];

const underTheTable = (plan: SurveyPlan): readonly Note[] => [
  note("Why a reading at the edge lies", [plan.edgeReading]),
  note(
    "Places without a hole",
    plan.dropped.map(({ where, why }) => `${where}: ${why}.`),
  ),
  note("Write down", plan.record.slice(1)),
  note("Care", plan.cautions),
  note(
    "Bring home too",
    plan.others.map(({ what, how }) => `${what}: ${how}.`),
    "box",
  ),
];

/** Notes at the largest size that fits; where even the smallest does not, the last lines are left to the data file. */
const notesIn = (notes: readonly Note[], columns: readonly Rect[]): readonly Item[] | undefined => {
  for (const most of [99, 8, 6, 4, 3, 2, 1]) {
    const shorter = notes.map((given) =>
      given.lines.length > most
        ? {
            ...given,
            lines: [...given.lines.slice(0, most), `and ${given.lines.length - most} more in the survey itself.`],
          }
        : given,
    );
    const set = setNotes(shorter, columns);
    if (set) return set.items;
  }
  return undefined;
};

const holesTable = (plan: SurveyPlan, job: Job, box: Rect, rowHeight: number) =>
  setTable(
    {
      tag: "note-holes",
      columns: [
        { heading: "Hole", share: 10, align: "middle" },
        { heading: "Where", share: 47 },
        { heading: "From left wall", share: 21, align: "middle" },
        { heading: "From back wall", share: 21, align: "middle" },
        { heading: "Depth read", share: 25 },
        { heading: "Flush, still concrete", share: 17, align: "middle" },
        { heading: "Dropped early", share: 15, align: "middle" },
        { heading: "Through, hooked", share: 15, align: "middle" },
        { heading: "What came out, what is under it, layer", share: 33 },
      ],
      rows: plan.holes.map(({ number, where, at }) => [
        String(number),
        where,
        tapeWords(at.x, job.units),
        tapeWords(at.y, job.units),
        "",
        "",
        "",
        "",
        "",
      ]),
      size: 2.25,
      rowHeight,
    },
    box,
  );

const inColumns = (box: Rect, count: number): readonly Rect[] => {
  const gap = 4;
  const width = (box.x1 - box.x0 - gap * (count + 1)) / count;
  return Array.from({ length: count }, (_, i) => {
    const x0 = box.x0 + gap + i * (width + gap);
    return { x0, x1: x0 + width, y0: box.y0 + 1.5, y1: box.y1 - 1 };
  });
};

interface Body {
  readonly items: readonly Item[];
  readonly written: string;
  readonly scale: number;
}

/** Least height of the notes under the table, mm of paper. */
const NOTES = 36;

/** Bay from above, what to look at first, and the bit in full size, down to `bottom`; undefined where it does not fit. */
const upper = (plan: SurveyPlan, job: Job, assessment: Assessment, box: Rect): Body | undefined => {
  const split = box.x0 + PLAN_WIDTH;
  const planBottom = box.y1 - BIT_HEIGHT;
  const zone = { x0: box.x0 + 1, y0: box.y0 + 1, x1: split - 1, y1: planBottom - 5 };
  const ground = planGround(job, assessment, zone, undefined, holesPart(plan, job, assessment));
  const beside = notesIn(besideThePlan(plan), [
    { x0: split + 2.5, x1: box.x1 - 2, y0: box.y0 + 1.5, y1: planBottom - 1.5 },
  ]);
  if (!ground || !beside) return undefined;
  return {
    written: ground.written,
    scale: ground.scale,
    items: [
      ringed(ground),
      ...scaleBar({ x: box.x0 + 2, y: planBottom - 2.4 }, ground.scale, job.units),
      words(
        "captions",
        box.x0 + 44,
        planBottom - 1.6,
        "Ring: hole to drill. Dotted: no hole inside, anchors come there. Dash-dot: joint.",
        1.9,
      ),
      ...beside,
      rule(split, box.y0, split, planBottom),
      rule(box.x0, planBottom, box.x1, planBottom),
      ...bitFigure(plan, { ...box, y0: planBottom }),
    ],
  };
};

/** The table to fill in, and under it what to write down. */
const lower = (rowHeight: number, plan: SurveyPlan, job: Job, box: Rect): readonly Item[] | undefined => {
  const table = holesTable(plan, job, box, rowHeight);
  const below = notesIn(underTheTable(plan), inColumns({ ...box, y0: table.bottom }, 3));
  return below && [...table.items, ...below];
};

const onePage = (
  rowHeight: number,
  plan: SurveyPlan,
  job: Job,
  assessment: Assessment,
  box: Rect,
): Body | undefined => {
  const tableHeight = holesTable(plan, job, box, rowHeight).bottom - box.y0;
  const planHeight = Math.min(124, box.y1 - box.y0 - tableHeight - BIT_HEIGHT - NOTES);
  if (planHeight < 75) return undefined;
  const middle = box.y0 + planHeight + BIT_HEIGHT;
  const above = upper(plan, job, assessment, { ...box, y1: middle });
  const below = lower(rowHeight, plan, job, { ...box, y0: middle });
  return above && below && { ...above, items: [...above.items, ...below] };
};

/** The largest plan that leaves rows for a gloved hand, then the highest rows; low rows only where nothing else fits. */
const best = (plan: SurveyPlan, job: Job, assessment: Assessment, box: Rect): Body | undefined => {
  const made = (heights: readonly number[]): readonly Body[] =>
    heights.flatMap((height) => onePage(height, plan, job, assessment, box) ?? []);
  const largest = (bodies: readonly Body[]): Body | undefined =>
    bodies.reduce<Body | undefined>((most, one) => (!most || one.scale < most.scale ? one : most), undefined);
  return largest(made([11, 10, 9, 8.5])) ?? largest(made([7.5, 7]));
};

/** Where a lift has more holes than one page holds, the plan fills the first and the table the second. */
const twoPages = (plan: SurveyPlan, job: Job, assessment: Assessment, box: Rect): readonly Body[] | undefined => {
  const first = upper(plan, job, assessment, box);
  const second = [11, 10, 9, 8.5, 7.5, 7, 6].map((height) => lower(height, plan, job, box)).find(Boolean);
  return first && second && [first, { ...first, items: second }];
};

const description = (plan: SurveyPlan, job: Job, assessment: Assessment): string =>
  [
    describePlan(job, assessment),
    ...plan.holes.map(
      ({ number, where, at }) =>
        `Hole ${number}, ${where}: ${tapeWords(at.x, job.units)} from the left wall, ${tapeWords(at.y, job.units)} from the back wall.`,
    ),
    isUnable(plan.mark) ? plan.mark.reason : `The bit is marked ${termWords(plan.mark)} from its tip.`,
  ].join(" ");

const draw = (job: Job, assessment: Assessment, { date, paper }: SheetOptions): readonly Drawing[] | Unable => {
  const plan = planSurvey(job, assessment);
  if (isUnable(plan)) return plan;
  if (plan.drilling !== "holes")
    return unable(
      "drill card",
      `${plan.sentence} ${plan.instead.slice(plan.drilling === "forbidden" ? 1 : 0).join(" ")}`.trim(),
    );
  const frame = { paper, lies: "upright", foot: FOOT } as const;
  const box = bodyOf(frame);
  const one = best(plan, job, assessment, box);
  const bodies = one ? [one] : twoPages(plan, job, assessment, box);
  if (!bodies)
    return unable("drill card", `${plan.holes.length} holes do not fit two readable pages: print the survey.`);
  return bodies.map(({ items, written }, i) =>
    framed(
      {
        ...frame,
        title: `Drill card: how thick is the floor${bodies.length > 1 ? `, ${i + 1} of ${bodies.length}` : ""}`,
        sentence: plan.sentence,
        aside: "Written figures govern.",
        description: description(plan, job, assessment),
        cells: cells(job, date, written),
      },
      items,
    ),
  );
};

/** The survey on one upright page, on two where a lift has many posts; refused where no hole may be drilled or none is needed. */
export const drillCard: Sheet = {
  name: "drill-card",
  title: "Drill card",
  reader: "for the person who drills the test holes",
  draw,
};
