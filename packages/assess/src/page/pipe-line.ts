import { distanceToSegment } from "@floorworthy/engine/geometry";
import type { Job, Pipe } from "@floorworthy/job";
import { floorLines } from "../facts/distances.ts";
import { shown, term } from "../facts/print.ts";
import { type Line, nothingToSay } from "./line.ts";

const [id, title] = ["pipe", "Anchors to pipes and tubes"];

const IN = 25.4;
/** Kept from a located pipe where nobody says more: half a hole and what a locator may be off; common practice, no source. */
const CLEAR = 3 * IN;
/** A pipe this far below the drilled holes is out of the drill's reach; common practice, no source. */
const BELOW = 2 * IN;

/** What is located must also be on the plan, and every hole clear of it. What is not located is a stop. */
export const pipeLine: Line = (job, { bases }) => {
  if (job.floor.state !== "standing") return nothingToSay(id, title);
  const undrawn = notDrawn(job);
  const line = { id, title, asked: "every hole clear of what is in the slab" };
  const hits = bases
    .flatMap((base) =>
      floorLines(job, base)
        .filter(({ kind }) => kind === "pipe")
        .flatMap((at) => {
          const pipe = job.floor.pipes.find(({ name }) => name === at.name)!;
          if (outOfReach(job, pipe)) return [];
          return base.anchors.map((anchor) => {
            const distance = distanceToSegment(anchor.at, at);
            return { anchor: anchor.id, to: at.words, distance, over: distance - clearOf(pipe), clear: clearOf(pipe) };
          });
        }),
    )
    .toSorted((a, b) => a.over - b.over);
  const worst = hits[0];
  if (worst && worst.over < -1e-6)
    return {
      ...line,
      result: "fails",
      asked: `at least ${shown(worst.clear, "length", job.units)} from the ${worst.to}`,
      found: `${shown(worst.distance, "length", job.units)} from anchor ${worst.anchor} to the ${worst.to}`,
      why: "A drilled tube, pipe or wire cannot be mended from above.",
      demand: term("c", `from anchor ${worst.anchor} to the ${worst.to}`, worst.distance, "length", job.units),
      capacity: term("c_min", "to be kept clear of drilling", worst.clear, "length", job.units),
    };
  if (undrawn.length > 0)
    return {
      ...line,
      result: "not-shown",
      found: `${undrawn.join(" and ")} located, not on the plan`,
      why: "Draw them, so that the distance to every hole can be read.",
    };
  if (!worst) return nothingToSay(id, title);
  return {
    ...line,
    result: "meets",
    found: `${shown(worst.distance, "length", job.units)} from anchor ${worst.anchor} to the ${worst.to}`,
    why: "As located; mark it on the floor before the first hole.",
  };
};

const clearOf = ({ clear }: Pipe): number => (clear.known ? clear.high : CLEAR);

const outOfReach = ({ lift }: Job, { depth }: Pipe): boolean => {
  const { holeDepth, nominalEmbedment } = lift.anchors.product;
  const drilled = holeDepth.known ? holeDepth.high : nominalEmbedment.known ? nominalEmbedment.high + IN : undefined;
  return depth.known && drilled !== undefined && depth.low >= drilled + BELOW;
};

const notDrawn = ({ floor, lift }: Job): string[] => {
  if (lift.anchors.holes.length === 0) return [];
  const drawn = (heating: boolean): boolean => floor.pipes.some(({ kind }) => (kind === "heating") === heating);
  return [
    ...(floor.heat.known && floor.heat.value === "located" && !drawn(true) ? ["heating tubes"] : []),
    ...(floor.utilities.known && floor.utilities.value === "located" && !drawn(false) ? ["pipes"] : []),
  ];
};
