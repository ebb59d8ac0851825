import { distanceToSegment, type Segment, segmentsMeet } from "@floorworthy/engine/geometry";
import { isUnable, type Unable, unable } from "@floorworthy/engine/quantities";
import { assumed, type Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { asOneBase, columnsOf } from "../columns.ts";
import { term } from "../facts/print.ts";
import { liftTurn } from "../layout.ts";
import { answeredByPad, answeredCorners, answeredMiddle } from "./answers-already.ts";
import { type Corner, cornersOf } from "./corners.ts";
import { askedOf, clearance, inTheWay, type KeepClear, type Strictness } from "./keep-clear.ts";
import { type Try, triesAround, triesAtCorner } from "./places-to-try.ts";
import { drillPractice } from "./practice.ts";
import type { Kept, SurveyHole, SurveyPlan } from "./survey-plan.ts";
import { partsOfTheFloor, thingsInTheFloor } from "./things-in-the-floor.ts";
import { lengthWords } from "./words.ts";

/** A question the survey must answer at one place: by a hole, by what the file holds, or not at all. */
interface Question {
  readonly where: string;
  readonly side: string | undefined;
  readonly reason: string;
  readonly answer: string | undefined;
  readonly tries: readonly Try[];
  readonly things: readonly KeepClear[];
}

/** Beyond a joint or a crack lies another panel: a hole there would not speak for this corner. */
const onThisSide = (job: Job, corner: Corner, tries: readonly Try[]): readonly Try[] => {
  const lines = linesOf(job).filter((line) => distanceToSegment(corner.at, line) > 0);
  return tries.filter(({ at }) => !lines.some((line) => segmentsMeet(line, { a: corner.at, b: at })));
};

const linesOf = ({ floor }: Job): readonly Segment[] => [
  ...floor.joints.map(({ from, to }) => ({ a: from, b: to })),
  ...floor.cracks.flatMap(({ line }) => line.slice(1).map((b, i) => ({ a: line[i]!, b }))),
];

export type PlannedHoles = Pick<SurveyPlan, "by" | "holes" | "answered" | "dropped">;

/** Holes one after the other, each clear of everything and of those planned before it. */
export const planHoles = (job: Job, bases: readonly PlacedBase[]): PlannedHoles | Unable => {
  const questions = bases.length > 0 ? aroundBases(job, bases) : gridOf(job);
  if (isUnable(questions)) return questions;
  const holes: SurveyHole[] = [];
  const answered: { where: string; by: string }[] = [];
  const dropped: { where: string; why: string }[] = [];
  for (const question of questions) {
    const { where, answer } = question;
    if (answer !== undefined) {
      answered.push({ where, by: answer });
      continue;
    }
    const things = [...question.things, ...holes.map(asThing)];
    const placed = firstLawful(question.tries, things);
    if (placed) holes.push(holeAt(job, holes.length + 1, question, placed, things));
    else dropped.push({ where, why: blockers(question.tries, things) });
  }
  return { by: bases.length > 0 ? "bases" : "grid", holes, answered, dropped };
};

const asThing = ({ at, number }: SurveyHole): KeepClear => ({
  what: `hole ${number}`,
  shape: { kind: "point", at },
  asked: assumed(drillPractice.otherHole).value,
  why: drillPractice.otherHole.why,
});

const aroundBases = (job: Job, bases: readonly PlacedBase[]): readonly Question[] => {
  const things = thingsInTheFloor(job, bases);
  const turn = liftTurn(job);
  const atBases = columnsOf(bases, job.lift).flatMap((column): readonly Question[] => {
    const base = asOneBase(column);
    const corners = cornersOf(base, turn);
    const pad = answeredByPad(job, base);
    const answers = answeredCorners(job, base, corners);
    const own = [...things, ...partsOfTheFloor(job, base)];
    return corners.map((corner, i) => atCorner(job, base, corner, pad ?? answers[i], own));
  });
  const middle = {
    x: bases.reduce((sum, { centre }) => sum + centre.x, 0) / bases.length,
    y: bases.reduce((sum, { centre }) => sum + centre.y, 0) / bases.length,
  };
  return [
    ...atBases,
    {
      where: "mid-bay",
      side: undefined,
      reason: "Between the columns: shows whether the slab is as thick away from the bases as beside them.",
      answer: answeredMiddle(job, middle),
      tries: triesAround(job, middle, MIDDLE_REACH),
      things: [...things, ...partsOfTheFloor(job, undefined)],
    },
  ];
};

const nameOf = ({ side }: PlacedBase): string => (side === "left" || side === "right" ? `${side} base` : side);

const MIDDLE_REACH = 914.4;
const GRID_REACH = 457.2;
const GRID_DEPTH = 1524;

const atCorner = (
  job: Job,
  base: PlacedBase,
  corner: Corner,
  answer: string | undefined,
  things: readonly KeepClear[],
): Question => ({
  where: `${nameOf(base)}, ${corner.words}`,
  side: base.side,
  reason: `The concrete under the ${corner.words} of the ${nameOf(base)}: a slab can lose its thickness within one base.`,
  answer,
  tries: onThisSide(job, corner, triesAtCorner(job, corner)),
  things,
});

/** Three rows and three columns over the middle of the bay, as far apart as the lift's columns stand. */
const gridOf = (job: Job): readonly Question[] | Unable => {
  const { bay, lift } = job;
  const lacking = [
    ...(bay.outline ? [] : ["the bay's outline (bay.outline)"]),
    ...(lift.spacing.known ? [] : ["the spacing of the lift's columns (lift.spacing)"]),
  ];
  if (!bay.outline || !lift.spacing.known)
    return unable(
      "survey",
      `Nobody has said where the lift is to stand. Fill in the place of the columns (columns.left, columns.right), or ${lacking.join(" and ")} for a grid over the middle of the bay.`,
    );
  const xs = bay.outline.map(({ x }) => x);
  const ys = bay.outline.map(({ y }) => y);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const dx = lift.spacing.value / 2;
  const dy = Math.min(GRID_DEPTH, (y1 - y0) / 4);
  const things = [...thingsInTheFloor(job, []), ...partsOfTheFloor(job, undefined)];
  return (["back", "middle", "front"] as const).flatMap((row, j) =>
    (["left", "middle", "right"] as const).map((column, i): Question => {
      const place = { x: (x0 + x1) / 2 + (i - 1) * dx, y: (y0 + y1) / 2 + (j - 1) * dy };
      return {
        where: `grid, ${row} row, ${column}`,
        side: undefined,
        reason: "The lift has no place yet: the grid shows where the slab is thick enough to choose one.",
        answer: answeredHere(job, place),
        tries: triesAround(job, place, GRID_REACH),
        things,
      };
    }),
  );
};

/** A reading only said to be near a base answers nothing while the base has no place. */
const answeredHere = (job: Job, place: { readonly x: number; readonly y: number }): string | undefined => {
  const readings = job.floor.readings.filter(({ at }) => at !== undefined).map((r) => ({ ...r, near: undefined }));
  return answeredMiddle({ ...job, floor: { ...job.floor, readings } }, place);
};

interface Placed {
  readonly found: Try;
  readonly strictness: Strictness;
}

const firstLawful = (tries: readonly Try[], things: readonly KeepClear[]): Placed | undefined => {
  for (const strictness of ["full", "lesser"] as const) {
    const found = tries.find(({ at }) => inTheWay(at, things, strictness).length === 0);
    if (found) return { found, strictness };
  }
  return undefined;
};

/** What leaves no place: the things that forbid the most of the tries. */
const blockers = (tries: readonly Try[], things: readonly KeepClear[]): string => {
  if (tries.length === 0) return "every place within reach lies beyond a joint or a crack";
  const counts = new Map<string, number>();
  for (const { at } of tries)
    for (const what of new Set(inTheWay(at, things, "lesser").map((thing) => thing.what)))
      counts.set(what, (counts.get(what) ?? 0) + 1);
  const most = [...counts].toSorted((a, b) => b[1] - a[1]).slice(0, 3);
  return `no place within reach keeps its distance from ${listed(most.map(([what]) => what))}`;
};

const listed = (words: readonly string[]): string =>
  words.length < 2 ? (words[0] ?? "everything") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`;

const holeAt = (
  job: Job,
  number: number,
  { where, side, reason, tries }: Question,
  { found, strictness }: Placed,
  things: readonly KeepClear[],
): SurveyHole => {
  const at = found.at;
  const { units } = job;
  return {
    number,
    at,
    where,
    side,
    reason: strictness === "lesser" ? `${reason} ${nearEdge}` : reason,
    moved: movedWords(job, tries[0], found, things),
    fromLeftWall: term("x", "from the left wall", at.x, "length", units, { basis: "planned" }),
    fromBackWall: term("y", "from the back wall", at.y, "length", units, { basis: "planned" }),
    keeps: keptOf(job, at, things, strictness),
  };
};

const nearEdge =
  "The bay leaves no place farther from the edge: the reading counts only where the next one inward is no thinner.";

const movedWords = (job: Job, first: Try | undefined, found: Try, things: readonly KeepClear[]): string | undefined => {
  if (!first || found.way === "straight") return undefined;
  const causes = [...new Set(inTheWay(first.at, things, "full").map(({ what }) => what))];
  const way = { farther: "farther out on the diagonal", beside: "beside the plate's side", around: "aside" }[found.way];
  const by = Math.hypot(found.at.x - first.at.x, found.at.y - first.at.y);
  return `${lengthWords(by, job.units)} ${way}${causes.length > 0 ? `, clear of ${listed(causes.slice(0, 2))}` : ""}`;
};

/** With more room to spare than this a thing is not worth a line, mm. */
const FAR = 1000;

/** The nearest thing of each name that is not far away, and the slab's edge always; tightest first. */
const keptOf = (job: Job, at: Try["at"], things: readonly KeepClear[], strictness: Strictness): readonly Kept[] => {
  const { units } = job;
  const nearest = new Map<string, { thing: KeepClear; found: number; spare: number }>();
  for (const thing of things) {
    const found = clearance(at, thing.shape);
    const spare = found - askedOf(thing, strictness);
    const kind = thing.what.startsWith("anchor ") ? "anchor" : thing.what;
    const known = nearest.get(kind);
    if (!known || spare < known.spare) nearest.set(kind, { thing, found, spare });
  }
  return [...nearest.values()]
    .filter(({ thing, spare }) => spare < FAR || thing.what === "slab edge")
    .toSorted((p, q) => p.spare - q.spare)
    .map(({ thing, found }) => ({
      what: thing.what,
      asked: term("c_least", `least distance from ${thing.what}`, askedOf(thing, strictness), "length", units, {
        basis: thing.why,
      }),
      found: term("c", `distance from ${thing.what}`, found, "length", units, { basis: "from the plan" }),
    }));
};
