/**
 * The joints of a job's whole floor. A floor to be poured gets the cheapest layout that keeps every rule, or the one that
 * breaks the least important rules the least, each unmet rule named; a standing floor keeps the joints it has.
 */
import type { Polygon } from "@floorworthy/engine/geometry";
import { ASPECT_LIMIT, alignJoints, type JointPlan, type JointTask, planJoints } from "@floorworthy/engine/joints";
import { isUnable, type Term, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Assessment } from "../assessment.ts";
import { boxOf } from "../layout.ts";
import { crossingWords } from "./crossings.ts";
import { isolationFor } from "./isolation.ts";
import type { JobJointPlan, JointWatch, JointWishes, NotMade, PlannedLine } from "./job-joint-plan.ts";
import { anchorsToClear, type Clearance, keepOutsFor } from "./keep-outs.ts";
import { reasonsFor } from "./line-reasons.ts";
import { anchorDistance, lineName, longTerm, whereWords } from "./line-words.ts";
import { partlyMade } from "./partly-made.ts";
import { clearances, gridStep, STOP_COST } from "./practice.ts";
import { type Spacing, spacingFor } from "./spacing.ts";
import { standingJoints } from "./standing-joints.ts";
import { tape } from "./tape.ts";
import { slabForJoints } from "./thickness.ts";
import { unmetWords } from "./unmet-words.ts";
import { type AskedLine, askewJoints, wantedFor } from "./wanted-lines.ts";

/** Corners read from fractions of an inch meet exactly. */
const squared = (outline: Polygon): Polygon =>
  outline.map(({ x, y }) => ({ x: Math.round(x * 1000) / 1000, y: Math.round(y * 1000) / 1000 }));

interface Found {
  readonly plan: JointPlan;
  readonly task: JointTask;
  readonly clear: Clearance;
}

/** A first look is taken on a grid this many times coarser. */
const COARSER = 3;

/** The clearances wished for; where a rule then goes unmet, those still accepted, if they keep more rules on a coarse grid. */
const clearanceFor = (taskFor: (clear: Clearance) => JointTask, shouldStop: () => boolean): Clearance | Unable => {
  const look = (clear: Clearance) => {
    const task = taskFor(clear);
    return planJoints({ ...task, step: COARSER * task.step }, { shouldStop });
  };
  const wished = look(clearances[0]);
  if (isUnable(wished) || wished.unmet.length === 0) return isUnable(wished) ? wished : clearances[0];
  const accepted = look(clearances[1]);
  if (isUnable(accepted)) return accepted;
  return accepted.unmet.length < wished.unmet.length ? clearances[1] : clearances[0];
};

const search = (taskFor: (clear: Clearance) => JointTask, { tell, signal }: JointWatch): Found | Unable => {
  const shouldStop = () => signal?.aborted === true;
  const clear = clearanceFor(taskFor, shouldStop);
  if (isUnable(clear)) return clear;
  const task = taskFor(clear);
  const plan = planJoints(task, { shouldStop, progress: (share) => tell?.(share, 1) });
  return isUnable(plan) ? plan : { plan: alignJoints(task, plan, shouldStop), task, clear };
};

const sorted = ({ lines }: JointPlan) =>
  lines.toSorted((p, q) => p.axis.localeCompare(q.axis) || p.a[p.axis] - q.a[q.axis] || p.a.x + p.a.y - q.a.x - q.a.y);

const linesOf = ({ plan, task }: Found, job: Job, assessment: Assessment): readonly PlannedLine[] =>
  sorted(plan).map((line, i) => {
    const stretch = { from: line.a, to: line.b };
    return {
      name: lineName(i),
      kind: "saw-cut",
      state: "to-make",
      ...stretch,
      length: longTerm("L", "length", Math.hypot(line.b.x - line.a.x, line.b.y - line.a.y), job.units),
      where: whereWords(stretch, job.units),
      reasons: reasonsFor(line, plan, task, job.units),
      toAnchor: anchorDistance(stretch, assessment, job.units),
    };
  });

const refusedWords = ({ plan, task }: Found, asked: readonly AskedLine[], job: Job): readonly NotMade[] => [
  ...plan.refused.map(({ wanted, reason }): NotMade => {
    const { axis, at, from, to } = wanted;
    const ends =
      axis === "x"
        ? { from: { x: at, y: from }, to: { x: at, y: to } }
        : { from: { x: from, y: at }, to: { x: to, y: at } };
    return {
      what: asked.find((line) => line === wanted)?.what ?? wanted.why,
      where: whereWords(ends, job.units),
      reason,
    };
  }),
  ...partlyMade(asked, plan.lines, task, job),
  ...askewJoints(job).map((joint) => ({
    what: joint.name || "a joint drawn in the job",
    where: whereWords(joint, job.units),
    reason: "Not cut: it runs askew to the walls; joints here run along them, so that panels stay near square.",
  })),
];

const warningsOf = (
  { clear, plan }: Found,
  job: Job,
  lines: readonly PlannedLine[],
  depth: number,
): readonly string[] => [
  ...(clear.words === "accepted"
    ? [
        `Cuts ${tape(clearances[0].base, job.units)} from the bases and ${tape(clearances[0].pad, job.units)} from the pads would leave panels too large; this layout keeps ${tape(clear.base, job.units)} from the bases and stays off the pads.`,
      ]
    : []),
  ...crossingWords(job, lines, depth),
  ...(plan.stops.length > 0
    ? [
        `Where a line stops at another (${plan.stops.length} ${plan.stops.length === 1 ? "place" : "places"}) the crack may run on: lay two bars 3 ft long across its path there.`,
      ]
    : []),
];

const planned = (job: Job, assessment: Assessment, h: Term, wishes: JointWishes, watch: JointWatch) => {
  const outline = assessment.layout.outline;
  if (!outline || outline.length < 3)
    return unable("joint plan", "The outline of the floor is not stated (bay.outline); joints are planned inside it.");
  const slab = squared(outline);
  const rules: Spacing = spacingFor(job, h, wishes);
  const sawn = Math.max(h.value / 4, 25.4);
  const wanted = wantedFor(job, assessment);
  const found = search(
    (clear) => ({
      slab,
      spacing: rules.limit,
      aspect: ASPECT_LIMIT,
      keepOuts: keepOutsFor(job, assessment, h.value, sawn, clear),
      anchors: anchorsToClear(job, assessment),
      columns: job.bay.posts.map(({ name, outline: post }) => ({ rect: boxOf(post), what: name || "a column" })),
      wanted,
      step: wishes.step ?? gridStep[job.units],
      stopCost: STOP_COST,
    }),
    watch,
  );
  if (isUnable(found)) return found;
  const { plan, task } = found;
  const lines = linesOf(found, job, assessment);
  return {
    basis: "planned",
    lines,
    cutOuts: [],
    isolation: isolationFor(job, plan, slab),
    panels: plan.panels,
    notMade: refusedWords(found, wanted, job),
    unmet: plan.unmet.map((rule) => ({ ...rule, words: unmetWords(rule, task.spacing, task.aspect, job.units) })),
    stops: plan.stops,
    warnings: warningsOf(found, job, lines, sawn),
    spacing: rules.spacing,
    depth: rules.depth,
    sawLength: {
      ...longTerm("Ls", "length of saw cut", plan.sawLength.value, job.units),
      formula: "Σ L",
      from: lines.map((line) => ({ ...line.length, words: `line ${line.name}` })),
    },
  } satisfies JobJointPlan;
};

/** Method: [engine/joints]. Cost: under 2 s for 40 × 60 ft with ten obstacles (bench/joints.ts). */
export const planJobJoints = (
  job: Job,
  assessment: Assessment,
  wishes: JointWishes = {},
  watch: JointWatch = {},
): JobJointPlan | Unable => {
  const stop = assessment.stops[0];
  if (stop) return unable("joint plan", `${stop.reason} ${stop.next}`.trim());
  if (job.floor.state === "standing") return standingJoints(job, assessment);
  const h = slabForJoints(job);
  return isUnable(h) ? h : planned(job, assessment, h, wishes, watch);
};
