import type { Job } from "@floorworthy/job";
import { factsOf } from "../facts/facts.ts";
import { amount, isStanding, type Question } from "./question.ts";

const PSI = 0.006894757293168361;
const IN = 25.4;

/** Found out with a hole in the slab: proposed only where nothing forbids one. */
export const byDrilling: readonly Question[] = [
  {
    id: "thickness",
    what: "thickness of the slab at each base",
    how: "drill four small holes just outside the corners of each base, more than 2 ft from slab edges, and hook the underside; never where tendons are possible",
    cost: "$0 to $150, an hour",
    costClass: "small",
    risk: "small-hole",
    open: (job) =>
      isStanding(job) &&
      factsOf(job).thickness.some(
        (under) => under.shown === "unknown" || under.shown === "named" || under.atMost !== undefined,
      ),
    worst: (job) => withThickness(job, -0.75 * IN),
    best: (job) => withThickness(job, 0.5 * IN),
  },
  {
    id: "strength",
    what: "strength of the concrete",
    how: "delivery tickets with cylinder reports if they exist; otherwise three cores tested and judged by ACI 214.4R",
    cost: "$0 for papers, $600 to $1,500 for cores",
    costClass: "test",
    risk: "core-hole",
    open: (job) => isStanding(job) && factsOf(job).strength.some((found) => found.shown === undefined),
    worst: (job) => withStrength(job, 2000 * PSI),
    best: (job) => withStrength(job, 4000 * PSI),
  },
];

/** @returns the same job with the slab measured at every base: the named thickness (or 4 in) changed by `by` mm */
const withThickness = (job: Job, by: number): Job => {
  const { floor } = job;
  const named = floor.thickness.known ? floor.thickness.value : 4 * IN;
  const reading = (near: "left" | "right") => ({
    at: undefined,
    near,
    thickness: amount(named + by + IN / 4),
    method: "drill" as const,
    end: "through" as const,
    under: { known: false } as const,
    place: "slab" as const,
    layer: amount(0),
    note: undefined,
  });
  const measured = floor.readings.filter(({ end }) => end !== "dropped");
  const zones = floor.zones.map((zone) =>
    zone.state === "standing" && zone.thickness.known && zone.thickness.basis.kind === "stated"
      ? { ...zone, thickness: amount(zone.thickness.value + by) }
      : zone,
  );
  return { ...job, floor: { ...floor, zones, readings: [...measured, reading("left"), reading("right")] } };
};

/** Known from one good report, whatever was ordered or cored before. */
const withStrength = (job: Job, fc: number): Job => {
  const test = { strength: amount(fc), ageDays: 28, cured: "standard" as const };
  const zones = job.floor.zones.map((zone) =>
    zone.state === "standing" && (zone.kind === "pad" || zone.kind === "strip")
      ? { ...zone, strength: amount(fc) }
      : zone,
  );
  return {
    ...job,
    floor: {
      ...job.floor,
      zones,
      strength: { ...job.floor.strength, specified: { known: false }, cylinders: [test], cores: [] },
    },
  };
};
