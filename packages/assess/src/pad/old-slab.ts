import { assumed, defaults, type Job } from "@floorworthy/job";
import { factsOf } from "../facts/facts.ts";

/** The slab a pad is cut into, or cast with: what counts of it, at its worst end. mm, MPa */
export interface OldSlab {
  readonly thickness: number;
  readonly strength: number;
}

/** The thinner of both sides; a floor nobody knows counts as an unmeasured slab of 4 in. */
export const oldSlabOf = (job: Job): OldSlab => {
  const bare: Job = {
    ...job,
    floor: { ...job.floor, zones: job.floor.zones.filter((z) => z.state === "standing" || z.kind === "slab") },
  };
  const facts = factsOf(bare);
  const counted = facts.thickness.flatMap(({ thickness }) => (thickness === undefined ? [] : [thickness]));
  const strengths = facts.strength.map(({ worst }) => worst);
  if (job.floor.state === "to-be-poured" && job.floor.thickness.known)
    return { thickness: job.floor.thickness.low, strength: Math.min(...strengths, Number.POSITIVE_INFINITY) };
  return {
    thickness:
      counted.length > 0 ? Math.min(...counted) : 4 * 25.4 - assumed(defaults.unmeasuredThicknessAllowance).value,
    strength: strengths.length > 0 ? Math.min(...strengths) : assumed(defaults.strength).value,
  };
};
