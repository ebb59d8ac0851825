import type { Assessment } from "@floorworthy/assess";
import { anchoring } from "@floorworthy/assess/facts";
import type { Rect } from "@floorworthy/engine/geometry";
import { isUnable, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { wrapText } from "../drawing/wrap-text.ts";
import { describePlan } from "../plan/describe-plan.ts";
import { planGround } from "../plan/plan-ground.ts";
import { describeSection } from "../section/pad-section.ts";
import { sectionGround } from "../section/section-ground.ts";
import { barsPart, type DrawnPour, drawnPour } from "./drawn-pour.ts";
import { bodyOf, framed, rule, words } from "./frame.ts";
import type { Note } from "./note.ts";
import { jointNote, materialsNote, mixNote, quantityNote, steelNote } from "./order-notes.ts";
import { cautionNote, curingNote, datesNote, pourDayNote, toleranceNote } from "./pour-notes.ts";
import { type SheetMode, sheetMode } from "./refusal.ts";
import { scaleBar } from "./scale-bar.ts";
import { setNotes } from "./set-notes.ts";
import type { SheetOptions } from "./sheet.ts";
import {
  anchorsNote,
  beforeDrillingNote,
  conditionsNote,
  foundNote,
  nothingToPourNote,
  pageNote,
} from "./standing-notes.ts";
import type { Cell } from "./title-block.ts";

const notesOf = (
  mode: SheetMode,
  { job, plan, order }: DrawnPour,
  assessment: Assessment,
  date: string,
): readonly Note[] =>
  mode === "pour"
    ? [
        quantityNote(job, order, assessment),
        materialsNote(order),
        conditionsNote(assessment),
        mixNote(job, order),
        steelNote(job, order, assessment),
        jointNote(job, plan),
        toleranceNote(job),
        pourDayNote(job),
        curingNote(job),
        datesNote(job, mode, date),
        cautionNote(assessment, mode),
      ]
    : [
        nothingToPourNote(assessment),
        conditionsNote(assessment),
        pageNote(assessment),
        foundNote(job),
        ...(anchoring(job.lift) === "anchored" ? [anchorsNote(job), beforeDrillingNote(job)] : []),
        datesNote(job, mode, date),
        cautionNote(assessment, mode),
      ];

const titles: Readonly<Record<SheetMode, string>> = {
  pour: "Concrete to pour for a vehicle lift",
  standing: "Floor for a vehicle lift: no concrete is to be poured",
};

const cells = (
  job: Job,
  date: string,
  plan: string,
  section: string,
): readonly { share: number; cells: readonly Cell[] }[] => {
  const given = (words: string | undefined) => (words ? [words] : []);
  const blank = (caption: string): Cell => ({ caption, words: [] });
  return [
    { share: 62, cells: [{ caption: "Job", words: [job.title, ...given(job.customer), ...given(job.place)] }] },
    {
      share: 46,
      cells: [{ caption: "Lift, from its maker's page", words: [job.lift.name, ...given(job.lift.edition)] }],
    },
    { share: 38, cells: [blank("Concrete contractor"), blank("Poured on")] },
    { share: 34, cells: [blank("Ticket no."), blank("Strength shown by")] },
    { share: 38, cells: [blank("Checked on site by"), blank("Date")] },
    {
      share: 45,
      cells: [
        { caption: "Scales", words: [`Plan ${plan}${section ? `; section ${section}` : ""}`] },
        { caption: "Drawn", words: [`${date}, sheet 1 of 1`] },
      ],
    },
  ];
};

/** Two ways to share the sheet: a wide plan, or more room for words. */
const layouts = {
  wide: { plan: 0.565, columns: 2 },
  narrow: { plan: 0.44, columns: 3 },
} as const;

interface SheetLayout {
  readonly plan: number;
  readonly columns: number;
}

/** Em sizes, mm: comfortable, and still acceptable where it buys a larger plan. */
const COMFORTABLE = 2;
const ACCEPTABLE = 1.85;

const caption = (x: number, y: number, what: string): Item => words("captions", x, y, what, 2.3, { lettering: "bold" });

interface Body {
  readonly items: readonly Item[];
  readonly size: number;
  readonly scale: number;
  readonly plan: string;
  readonly section: string;
}

const legend = (mode: SheetMode): string =>
  mode === "pour"
    ? "Stones: new concrete. Thin lines: top bars. Dashed box: no steel inside. Dotted: no joint, tube or drain inside. Long dashes: joint to make. Dash-dot: joint that is there."
    : "Dashed box: drilling area. Dotted: no joint inside. Dash-dot: joint; heavy when the pour ended there. Triangle: thickness reading.";

const body = (
  mode: SheetMode,
  drawn: DrawnPour,
  assessment: Assessment,
  box: Rect,
  layout: SheetLayout,
  date: string,
): Body | undefined => {
  const { job } = drawn;
  const split = box.x0 + (box.x1 - box.x0) * layout.plan;
  const planZone = { x0: box.x0 + 1, y0: box.y0 + 4.5, x1: split - 1, y1: box.y1 - 5 };
  const plan = planGround(job, assessment, planZone, undefined, mode === "pour" ? barsPart(drawn.order) : undefined);
  if (!plan) return undefined;
  const tall = 43;
  const sectionZone = { x0: split + 1, y0: box.y0 + 4.5, x1: box.x1 - 1, y1: box.y0 + tall - 1 };
  const section = sectionGround(job, assessment, sectionZone);
  const top = section ? box.y0 + tall : box.y0;
  const gap = 3;
  const width = (box.x1 - split - gap * (layout.columns + 1)) / layout.columns;
  const columns = Array.from({ length: layout.columns }, (_, i) => {
    const x0 = split + gap + i * (width + gap);
    return { x0, x1: x0 + width, y0: top + 1.5, y1: box.y1 - 1.5 };
  });
  const notes = setNotes(notesOf(mode, drawn, assessment, date), columns);
  if (!notes) return undefined;
  return {
    size: notes.size,
    scale: plan.scale,
    plan: plan.written,
    section: section?.written ?? "",
    items: [
      plan,
      caption(
        box.x0 + 2,
        box.y0 + 3.6,
        `Plan, ${plan.written}. Dimensions ${job.units === "si" ? "in mm " : ""}from the left and the back wall`,
      ),
      ...scaleBar({ x: box.x0 + 2, y: box.y1 - 2.2 }, plan.scale, job.units),
      ...wrapText(legend(mode), 1.9, "regular", split - box.x0 - 44).map((line, i) =>
        words("captions", box.x0 + 42, box.y1 - 3.6 + i * 2.3, line, 1.9),
      ),
      rule(split, box.y0, split, box.y1),
      ...notes.items,
      ...(section
        ? [
            section,
            caption(
              split + 2,
              box.y0 + 3.6,
              `Section through ${assessment.layout.zones.length ? "the concrete under a column" : "the slab under a column"}, ${section.written}`,
            ),
            rule(split, top, box.x1, top),
          ]
        : []),
    ],
  };
};

/** A wide plan where its words can be read; more room for words where the plan loses nothing or they could not be. */
const chooseBody = (
  mode: SheetMode,
  drawn: DrawnPour,
  assessment: Assessment,
  box: Rect,
  date: string,
): Body | undefined => {
  const wide = body(mode, drawn, assessment, box, layouts.wide, date);
  if (wide && wide.size >= COMFORTABLE) return wide;
  const narrow = body(mode, drawn, assessment, box, layouts.narrow, date);
  return wide && (!narrow || (wide.scale < narrow.scale && wide.size >= ACCEPTABLE)) ? wide : narrow;
};

/**
 * The sheet for the concrete contractor: exactly one page, to a standard scale, readable in black and white. Unable with
 * the reason where a stop, a refusal or a missing fact forbids it.
 */
export const contractorSheet = (
  job: Job,
  assessment: Assessment,
  { date, paper }: SheetOptions,
): readonly Drawing[] | Unable => {
  const mode = sheetMode(job, assessment);
  if (isUnable(mode)) return mode;
  const drawn = drawnPour(job, assessment);
  const chosen = chooseBody(
    mode,
    mode === "pour" ? drawn : { ...drawn, job },
    assessment,
    bodyOf({ paper, lies: "on-its-side" }),
    date,
  );
  if (!chosen) {
    return unable(
      "contractor's sheet",
      "Neither the floor nor the lift has a place yet, or there is too much to say for one readable page.",
    );
  }
  return [
    framed(
      {
        paper,
        lies: "on-its-side",
        title: titles[mode],
        sentence: assessment.sentence,
        aside: "To scale when printed at 100 %. Written figures govern.",
        description: `${describePlan(drawn.job, assessment)} ${describeSection(drawn.job, assessment)}`,
        cells: cells(job, date, chosen.plan, chosen.section),
      },
      chosen.items,
    ),
  ];
};
