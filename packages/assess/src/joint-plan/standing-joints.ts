/** A floor that stands: its joints are taken as given, and wishes for more are judged. */

import { distance } from "@floorworthy/engine/geometry";
import { lineBlocks } from "@floorworthy/engine/joints";
import { outlineLength } from "@floorworthy/engine/orders";
import { isUnable, type Term } from "@floorworthy/engine/quantities";
import type { Job, Joint } from "@floorworthy/job";
import type { Assessment } from "../assessment.ts";
import type { JobJointPlan, NotMade, PlannedLine } from "./job-joint-plan.ts";
import { anchorsToClear, keepOutsFor, makersJointDistance } from "./keep-outs.ts";
import { anchorDistance, longTerm, whereWords } from "./line-words.ts";
import { clearances } from "./practice.ts";
import { spacingFor } from "./spacing.ts";
import { tape } from "./tape.ts";
import { slabForJoints } from "./thickness.ts";
import { proposedJoints } from "./wanted-lines.ts";

const lineOf = (joint: Joint, job: Job, assessment: Assessment, reasons: readonly string[]): PlannedLine => ({
  name: joint.name || joint.kind.replace("-", " "),
  kind: joint.kind,
  state: joint.state === "proposed" ? "to-make" : "there",
  from: joint.from,
  to: joint.to,
  length: longTerm("L", "length", distance(joint.from, joint.to), job.units),
  where: whereWords(joint, job.units),
  reasons,
  toAnchor: anchorDistance(joint, assessment, job.units),
});

/** What forbids a wished line, or nothing. */
const forbidden = (joint: Joint, job: Job, assessment: Assessment, slab: number): string | undefined => {
  const axis =
    Math.abs(joint.from.x - joint.to.x) < 1 ? "x" : Math.abs(joint.from.y - joint.to.y) < 1 ? "y" : undefined;
  if (!axis) return "it runs askew to the walls";
  const along = axis === "x" ? "y" : "x";
  const [low, high] = [Math.min(joint.from[along], joint.to[along]), Math.max(joint.from[along], joint.to[along])];
  const task = {
    keepOuts: keepOutsFor(job, assessment, slab, slab / 3, clearances[1]),
    anchors: anchorsToClear(job, assessment),
  };
  return lineBlocks(task, axis, joint.from[axis]).find((b) => b.from < high && b.to > low)?.what;
};

const tooNear = (line: PlannedLine, job: Job, asked: number): readonly string[] => {
  const { toAnchor } = line;
  if (!toAnchor || !(asked > 0)) return [];
  const mm = toAnchor.value * (toAnchor.unit === "in" ? 25.4 : 1);
  return mm < asked - 1e-6
    ? [`${line.name} is ${tape(mm, job.units)} from an anchor; the maker asks ${tape(asked, job.units)}.`]
    : [];
};

export const standingJoints = (job: Job, assessment: Assessment): JobJointPlan => {
  const h = slabForJoints(job);
  const slab = isUnable(h) ? 0 : h.value;
  const there = job.floor.joints
    .filter((joint) => joint.state === "standing")
    .map((joint) => lineOf(joint, job, assessment, ["It is there."]));
  const judged = proposedJoints(job).map((joint) => ({ joint, no: forbidden(joint, job, assessment, slab) }));
  const made = judged
    .filter(({ no }) => no === undefined)
    .map(({ joint }) => lineOf(joint, job, assessment, ["It was asked for in the job, and nothing forbids it."]));
  const notMade = judged.flatMap(({ joint, no }): readonly NotMade[] =>
    no
      ? [
          {
            what: joint.name || "a joint drawn in the job",
            where: whereWords(joint, job.units),
            reason: `Not cut: ${no}.`,
          },
        ]
      : [],
  );
  const cutOuts = job.floor.zones
    .filter((zone) => zone.state === "proposed" && zone.kind !== "topping" && zone.outline.length > 2)
    .map(({ name, outline }) => ({
      what: name || "the cut-out",
      outline,
      length: longTerm("L", "full-depth cut round it", outlineLength(outline), job.units),
    }));
  const saw = made.reduce((sum, l) => sum + l.length.value, 0) + cutOuts.reduce((sum, c) => sum + c.length.value, 0);
  const rules = isUnable(h) ? undefined : spacingFor(job, h, {});
  return {
    basis: "as-it-is",
    lines: [...there, ...made],
    cutOuts,
    isolation: [],
    panels: [],
    notMade,
    unmet: [],
    stops: [],
    warnings: [
      ...there.flatMap((line) => tooNear(line, job, makersJointDistance(job.lift))),
      ...(cutOuts.length > 0
        ? [
            "Do not overcut the corners of a cut-out: finish them with a drilled hole or a chain saw. The edge of a cut-out is a cold joint, and counts as an edge for the anchors.",
          ]
        : []),
    ],
    spacing: undefined,
    depth: made.length > 0 ? rules?.depth : undefined,
    sawLength: { ...longTerm("Ls", "length of saw cut", 0, job.units), value: saw } satisfies Term,
  };
};
