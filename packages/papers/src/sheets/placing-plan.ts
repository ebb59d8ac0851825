import type { Assessment } from "@floorworthy/assess";
import { jobAt, layoutAt, type MarginMap, type Placing, placeLift } from "@floorworthy/assess/place";
import type { Rect } from "@floorworthy/engine/geometry";
import { type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { planGround } from "../plan/plan-ground.ts";
import { bodyOf, framed, rule, words } from "./frame.ts";
import { marginTable } from "./placing-plan-map.ts";
import { placingNotes } from "./placing-plan-notes.ts";
import { placingOverlay } from "./placing-plan-overlay.ts";
import { scaleBar } from "./scale-bar.ts";
import { setNotes } from "./set-notes.ts";
import type { Sheet, SheetOptions } from "./sheet.ts";

interface Body {
  readonly items: readonly Item[];
  readonly written: string;
}

const PLAN_SHARE = 0.56;

const body = (
  job: Job,
  assessment: Assessment,
  placing: Placing,
  map: MarginMap | undefined,
  box: Rect,
): Body | undefined => {
  const split = box.x0 + (box.x1 - box.x0) * PLAN_SHARE;
  const zone = { x0: box.x0 + 1, y0: box.y0 + 4.5, x1: split - 1, y1: box.y1 - 5 };
  const at = placing.proposed ?? placing.wanted;
  const bare: Job = { ...job, floor: { ...job.floor, readings: [] } };
  const shownJob = at ? jobAt(bare, at) : bare;
  const shownPlan = at ? { ...assessment, layout: layoutAt(job, at) } : assessment;
  const first = planGround(shownJob, shownPlan, zone);
  if (!first) return undefined;
  const wantedBases = placing.wanted ? layoutAt(job, placing.wanted).bases.map(({ outline }) => outline) : [];
  const overlay = placingOverlay(job, placing, wantedBases, first.scale);
  const plan = planGround(shownJob, shownPlan, zone, { ratio: first.scale, written: first.written }, overlay);
  if (!plan) return undefined;
  const right = { x0: split + 3, x1: box.x1 - 3, y0: box.y0 + 1.5, y1: box.y1 - 1.5 };
  const table = map && marginTable(job, map, { ...right, y0: right.y1 - 62, y1: right.y1 });
  const shift = table ? right.y1 - table.bottom : 0;
  const tableItems = table
    ? marginTable(job, map, { ...right, y0: right.y1 - 62 + shift, y1: right.y1 + shift }).items
    : [];
  const foot = table ? right.y1 - 62 + shift - 2.5 : right.y1;
  const width = (right.x1 - right.x0 - 3) / 2;
  const columns = [
    { x0: right.x0, x1: right.x0 + width, y0: right.y0, y1: foot },
    { x0: right.x0 + width + 3, x1: right.x1, y0: right.y0, y1: foot },
  ];
  const notes = setNotes(placingNotes(job, placing, assessment, map), columns);
  if (!notes) return undefined;
  return {
    written: plan.written,
    items: [
      plan,
      words(
        "captions",
        box.x0 + 2,
        box.y0 + 3.6,
        `Plan, ${plan.written}. The lift at the place proposed; dimensions from the left and the back wall`,
        2.3,
        {
          lettering: "bold",
        },
      ),
      ...scaleBar({ x: box.x0 + 2, y: box.y1 - 2.2 }, plan.scale, job.units),
      words(
        "captions",
        box.x0 + 44,
        box.y1 - 2.4,
        "Hatched: where the middle of the lift may be. Cross: the middle as drawn. Dashed plates: as wanted.",
        1.9,
      ),
      rule(split, box.y0, split, box.y1),
      ...notes.items,
      ...(table ? [rule(split, foot + 0.8, box.x1, foot + 0.8), ...tableItems] : []),
    ],
  };
};

/** The plan of where the lift may stand, with the margin over the places beside it when it was computed. Refused under a stop. */
export const placingPlan = (
  job: Job,
  assessment: Assessment,
  { date, paper }: SheetOptions,
  map?: MarginMap,
  placing: Placing = placeLift(job),
): readonly Drawing[] | Unable => {
  if (placing.answer === "stopped" || placing.answer === "not-known") return unable("placing plan", placing.sentence);
  const chosen = body(job, assessment, placing, map, bodyOf({ paper, lies: "on-its-side" }));
  if (!chosen) return unable("placing plan", "There is too much to say for one readable page.");
  return [
    framed(
      {
        paper,
        lies: "on-its-side",
        title: "Where the lift may stand",
        sentence: placing.sentence,
        aside: "To scale when printed at 100 %. Written figures govern.",
        description: [
          placing.sentence,
          ...placing.blockers.map(({ sentence }) => sentence),
          ...placing.ranges.map(({ sentence }) => sentence),
        ].join(" "),
        cells: [
          {
            share: 70,
            cells: [
              {
                caption: "Job",
                words: [job.title, ...(job.customer ? [job.customer] : []), ...(job.place ? [job.place] : [])],
              },
            ],
          },
          {
            share: 50,
            cells: [
              {
                caption: "Lift, from its maker's page",
                words: [job.lift.name, ...(job.lift.edition ? [job.lift.edition] : [])],
              },
            ],
          },
          {
            share: 45,
            cells: [
              { caption: "Measured again on site by", words: [] },
              { caption: "Date", words: [] },
            ],
          },
          {
            share: 45,
            cells: [
              { caption: "Tendons, tubes and pipes ruled out by", words: [] },
              { caption: "Date", words: [] },
            ],
          },
          {
            share: 45,
            cells: [
              { caption: "Scale", words: [chosen.written] },
              { caption: "Drawn", words: [`${date}, sheet 1 of 1`] },
            ],
          },
        ],
      },
      chosen.items,
    ),
  ];
};

export const placingSheet: Sheet = {
  name: "placing",
  title: "Where the lift may stand",
  reader: "for the person who sets out the columns",
  draw: (job, assessment, options) => placingPlan(job, assessment, options),
};
