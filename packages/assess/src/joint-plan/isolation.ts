import { distance, distanceToSegment, type Polygon, sides } from "@floorworthy/engine/geometry";
import type { JointPlan } from "@floorworthy/engine/joints";
import type { Job } from "@floorworthy/job";
import type { Isolation } from "./job-joint-plan.ts";
import { longTerm } from "./line-words.ts";

/** A wall stands at the slab's edge when both its ends lie this near to the edge, mm. */
const BESIDE = 50;

/** Filler strip along the walls that stand at the slab's edge. */
const alongWalls = ({ bay, units }: Job, outline: Polygon): readonly Isolation[] =>
  bay.walls.flatMap(({ name, from, to }) => {
    const beside = sides(outline).some(
      (side) => distanceToSegment(from, side) < BESIDE && distanceToSegment(to, side) < BESIDE,
    );
    return beside
      ? [
          {
            what: name || "a wall",
            outline: [from, to],
            shape: "along" as const,
            length: longTerm("L", "filler along the wall", distance(from, to), units),
          },
        ]
      : [];
  });

const roundColumns = (plan: JointPlan, units: Job["units"]): readonly Isolation[] =>
  plan.isolation.map(({ outline, what }) => ({
    what,
    outline,
    shape: "round",
    length: longTerm(
      "L",
      "filler round the column",
      sides(outline).reduce((sum, { a, b }) => sum + distance(a, b), 0),
      units,
    ),
  }));

export const isolationFor = (job: Job, plan: JointPlan, outline: Polygon): readonly Isolation[] => [
  ...roundColumns(plan, job.units),
  ...alongWalls(job, outline),
];
