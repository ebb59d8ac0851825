/** Where to cut, to scale, with each line's place and reason. The hour of the saw stands on the cure card. */
import type { Assessment } from "@floorworthy/assess";
import { type JobJointPlan, planJobJoints, withPlannedJoints } from "@floorworthy/assess/joint-plan";
import type { Rect } from "@floorworthy/engine/geometry";
import { isUnable, type Term, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { describePlan } from "../plan/describe-plan.ts";
import { planGround } from "../plan/plan-ground.ts";
import { printFeet, printLength } from "../print/measure.ts";
import { bodyOf, framed, words } from "./frame.ts";
import { type Note, note } from "./note.ts";
import { amountWords } from "./order-notes.ts";
import { scaleBar } from "./scale-bar.ts";
import { setNotes } from "./set-notes.ts";
import type { Sheet, SheetOptions } from "./sheet.ts";
import { setTable } from "./table.ts";

const mmOf = ({ value, unit }: Term): number => value * (unit === "in" ? 25.4 : unit === "ft" ? 304.8 : 1);

/** Short things in inches, long ones in feet and inches. */
const short = (term: Term, { units }: Job): string =>
  units === "si" || mmOf(term) < 610 ? printLength(mmOf(term), units) : printFeet(mmOf(term), units);

const tableOf = (plan: JobJointPlan, job: Job, size: number) => ({
  tag: "note-lines",
  size,
  rowHeight: 0,
  columns: [
    { heading: "Line", share: 9, align: "middle" as const },
    { heading: "Where", share: 52 },
    { heading: "Length", share: 13, align: "end" as const },
    { heading: "To anchor", share: 15, align: "end" as const },
    { heading: "Why", share: 82 },
  ],
  rows: plan.lines.map(({ name, where, length, toAnchor, reasons }) => [
    name,
    where,
    amountWords(length, ""),
    toAnchor ? short(toAnchor, job) : "",
    reasons.join(" "),
  ]),
});

const rulesNote = (plan: JobJointPlan, job: Job): Note =>
  plan.basis === "planned"
    ? note("Rules kept", [
        plan.spacing
          ? `Joints at most ${printFeet(mmOf(plan.spacing), job.units)}${job.units === "si" ? " mm" : ""} apart, panels at most 1.5 times as long as wide.`
          : undefined,
        plan.depth
          ? `Cut ${short(plan.depth, job)} deep, a quarter of the slab; never deeper than a third.`
          : undefined,
        "No cut over a pad or near a base; a joint at every inside corner and building column.",
        `Saw cut in all: ${amountWords(plan.sawLength, "")}. Hour of the saw: cure and saw card.`,
        "Cracks cannot be prevented, only placed: a few panels in a hundred crack all the same.",
      ])
    : note("What is here", [
        "The joints that are there are taken as given.",
        ...plan.cutOuts.map(({ what, length }) => `Cut out for ${what}, full depth: ${amountWords(length, "")}.`),
      ]);

const ticks = ({ basis }: JobJointPlan): readonly string[] =>
  basis === "planned"
    ? [
        "Lines snapped from two walls before sawing; bases and windows marked on the slab.",
        "A trial cut first: begin when its edge does not ravel. A spare blade is there.",
        "Depth measured at both ends of every line. Slurry vacuumed.",
        "Water at the saw or a vacuum: silica dust harms the lungs.",
      ]
    : [
        "Tubes, tendons, conduits and private lines located and marked before the first cut.",
        "Outlines snapped from two walls, diagonals equal.",
        "Water at the saw or a vacuum: silica dust harms the lungs. Slurry vacuumed.",
      ];

const notesOf = (plan: JobJointPlan, job: Job): readonly Note[] => [
  rulesNote(plan, job),
  note(
    "Rules that could not be kept",
    plan.unmet.map((u) => u.words),
  ),
  note("Asked for and not cut", [...new Set(plan.notMade.map(({ what, reason }) => `${what}: ${reason}`))]),
  note("Filler, full depth", [
    ...new Set(
      plan.isolation.map(
        ({ what, length, shape }) => `${shape === "round" ? "round" : "along"} ${what}, ${amountWords(length, "")}`,
      ),
    ),
  ]),
  note("Look out", plan.warnings),
  note("On the day", ticks(plan), "box"),
];

const legend =
  "Long dashes: joint to saw. Dash-dot: joint that is there. Short heavy dashes: filler, full depth. Dotted: no joint inside.";

interface Body {
  readonly items: readonly Item[];
  readonly written: string;
  readonly scale: number;
  readonly size: number;
}

/** Plan above, table and notes below; undefined when they do not all go in. */
const body = (
  plan: JobJointPlan,
  job: Job,
  drawn: Job,
  assessment: Assessment,
  box: Rect,
  share: number,
): Body | undefined => {
  const split = box.y0 + (box.y1 - box.y0) * share;
  const ground = planGround(drawn, assessment, { x0: box.x0 + 1, y0: box.y0 + 3, x1: box.x1 - 1, y1: split - 5 });
  if (!ground) return undefined;
  for (const size of SIZES) {
    const table = plan.lines.length
      ? setTable(tableOf(plan, job, size), { x0: box.x0 + 2, y0: split + 1, x1: box.x1 - 2, y1: box.y1 })
      : { items: [], bottom: split };
    const top = table.bottom + 2;
    const middle = (box.x0 + box.x1) / 2;
    const columns = [
      { x0: box.x0 + 3, x1: middle - 2, y0: top, y1: box.y1 - 1.5 },
      { x0: middle + 2, x1: box.x1 - 3, y0: top, y1: box.y1 - 1.5 },
    ];
    const notes = top < box.y1 - 12 ? setNotes(notesOf(plan, job), columns) : undefined;
    if (!notes || notes.size < size - 0.2) continue;
    return {
      written: ground.written,
      scale: ground.scale,
      size,
      items: [
        ground,
        words("captions", box.x0 + 2, split - 1.2, `${ground.written}. ${legend}`, 1.9),
        ...scaleBar({ x: box.x1 - 45, y: split - 2.2 }, ground.scale, job.units),
        ...table.items,
        ...notes.items,
      ],
    };
  }
  return undefined;
};

const SIZES = [2.2, 2.05, 1.9, 1.75] as const;
const SHARES = [0.62, 0.56, 0.5, 0.44, 0.38, 0.32] as const;

/** The largest plan whose words can still be read; among equals the largest words. */
const bestBody = (plan: JobJointPlan, job: Job, drawn: Job, assessment: Assessment, box: Rect): Body | undefined =>
  SHARES.flatMap((share) => body(plan, job, drawn, assessment, box, share) ?? []).toSorted(
    (a, b) => a.scale - b.scale || b.size - a.size,
  )[0];

const draw = (job: Job, assessment: Assessment, { date, paper }: SheetOptions): readonly Drawing[] | Unable => {
  const plan = planJobJoints(job, assessment);
  if (isUnable(plan)) return plan;
  if (plan.basis === "as-it-is" && plan.lines.length === 0 && plan.cutOuts.length === 0)
    return unable("joint sheet", "The floor stands, no joint is known in it, and none is to be cut.");
  const drawn = withPlannedJoints(job, plan);
  const made = bestBody(plan, job, drawn, assessment, bodyOf({ paper, lies: "upright" }));
  if (!made)
    return unable(
      "joint sheet",
      "The bay has no place on paper yet, or there is too much to say for one readable page.",
    );
  return [
    framed(
      {
        paper,
        lies: "upright",
        title: plan.basis === "planned" ? "Joints to cut" : "Joints of the floor",
        sentence:
          plan.basis === "planned"
            ? `${plan.lines.length} lines, ${amountWords(plan.sawLength, "")} of saw cut${plan.unmet.length > 0 ? `; ${plan.unmet.length} ${plan.unmet.length === 1 ? "panel breaks" : "panels break"} a rule, see below` : ""}.`
            : "The joints of a standing floor, and what is cut for new pads.",
        aside: "To scale when printed at 100 %. Written figures govern.",
        description: `${describePlan(drawn, assessment)} ${plan.lines.map(({ name, where }) => `Line ${name}: ${where}.`).join(" ")}`,
        cells: [
          { share: 70, cells: [{ caption: "Job", words: [job.title, ...(job.place ? [job.place] : [])] }] },
          {
            share: 44,
            cells: [
              { caption: "Sawn by", words: [] },
              { caption: "Sawn on, from - to", words: [] },
            ],
          },
          {
            share: 44,
            cells: [
              { caption: "Depth measured", words: [] },
              { caption: "Checked by", words: [] },
            ],
          },
          {
            share: 40,
            cells: [
              { caption: "Scale", words: [`Plan ${made.written}`] },
              { caption: "Drawn", words: [date] },
            ],
          },
        ],
      },
      made.items,
    ),
  ];
};

export const jointSheet: Sheet = {
  name: "joints",
  title: "Joint plan",
  reader: "for whoever saws the floor",
  draw,
};
