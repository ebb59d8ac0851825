import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import { assumed, defaults, type Job, type KnownQuantity } from "@floorworthy/job";
import type { MarginCheck } from "../assessment.ts";
import { factsOf } from "../facts/facts.ts";
import { anchorChecks } from "../margin/anchors.ts";
import { baseCases } from "../margin/cases.ts";
import { type MarginInputs, marginInputs } from "../margin/inputs.ts";
import { slabChecks } from "../margin/slab.ts";
import { type HeightLoads, loadsByHeight } from "./by-height.ts";
import type { VehicleFacts } from "./vehicle-facts.ts";

/** The floor under one vehicle at the worst end of every fact. */
export interface FloorUnder {
  readonly heights: readonly HeightLoads[];
  /** worst first */
  readonly checks: readonly MarginCheck[];
  /** holds: also in cracked concrete; thin: only in uncracked; short: not */
  readonly word: "holds" | "thin" | "short";
  readonly side: "left" | "right" | undefined;
  readonly unable: readonly Unable[];
}

/** The lift's own margin, with the vehicle's weight and place instead of the rated load. */
export const floorUnder = (job: Job, facts: VehicleFacts): FloorUnder | Unable => {
  const carried = jobFor(job, facts);
  const found = factsOf(carried);
  const inputs = marginInputs(carried, found, "worst");
  if (isUnable(inputs)) return inputs;
  const offsets = [...new Set(facts.offset)];
  const heights: HeightLoads[] = [];
  const checks = new Map<string, MarginCheck>();
  const unable: Unable[] = [];
  for (const foreAft of offsets) {
    const rows = loadsByHeight(inputs, foreAft);
    if (isUnable(rows)) return rows;
    if (foreAft === farther(offsets)) heights.push(...rows);
    const judged = checksAt(carried, { ...inputs, duty: { ...inputs.duty, foreAft } }, found);
    if (isUnable(judged)) return judged;
    unable.push(...judged.unable);
    for (const check of judged.checks) {
      const before = checks.get(check.id);
      if (!before || check.ratio > before.ratio) checks.set(check.id, check);
    }
  }
  const sorted = [...checks.values()].filter(({ weight }) => weight === "limit").toSorted((a, b) => b.ratio - a.ratio);
  return { heights, checks: sorted, word: wordOf(sorted), side: sideOf(sorted), unable };
};

const farther = (offsets: readonly number[]): number => offsets.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));

const checksAt = (job: Job, inputs: MarginInputs, found: ReturnType<typeof factsOf>) => {
  const cases = baseCases(job, inputs, found.bases);
  if (isUnable(cases)) return cases;
  const counted = cases.filter(({ standing }) => standing === "counted");
  const [anchors, slab] = [anchorChecks(job, inputs, counted, "limit"), slabChecks(job, inputs, counted, "limit")];
  return { checks: [...anchors.checks, ...slab.checks], unable: [...anchors.unable, ...slab.unable] };
};

/** The same lift carrying this vehicle: only its weight, pads and place differ; what columns weigh stays. */
const jobFor = (job: Job, { weight, spacing, pads }: VehicleFacts): Job => {
  const { lift } = job;
  const share = assumed(defaults.columnWeightShare);
  const columnWeight: KnownQuantity | undefined =
    !lift.columnWeight.known && lift.rated.known
      ? {
          ...share,
          value: share.value * lift.rated.value,
          low: share.low * lift.rated.value,
          high: share.high * lift.rated.value,
        }
      : undefined;
  const only = (kind: "car" | "frame-truck", reach: Job["lift"]["reachCar"]) =>
    pads.includes(kind) ? reach : ({ known: false } as const);
  return {
    ...job,
    lift: {
      ...lift,
      ...(weight ? { rated: weight } : {}),
      ...(columnWeight ? { columnWeight } : {}),
      reachCar: only("car", lift.reachCar),
      reachTruck: only("frame-truck", lift.reachTruck),
      padSpacing: spacing,
      reactions: [],
    },
  };
};

const wordOf = (checks: readonly MarginCheck[]): FloorUnder["word"] => {
  const all = (concrete: "cracked" | "uncracked") => checks.every((c) => c.concrete === concrete || c.ratio <= 1);
  return all("uncracked") ? "holds" : all("cracked") ? "thin" : "short";
};

const sideOf = (checks: readonly MarginCheck[]): FloorUnder["side"] => {
  const words = checks.find(({ governs, concrete }) => governs && concrete !== "uncracked")?.governs ?? "";
  return words.startsWith("left") ? "left" : words.startsWith("right") ? "right" : undefined;
};
