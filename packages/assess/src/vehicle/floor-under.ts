import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import { assumed, defaults, type Job, type KnownQuantity } from "@floorworthy/job";
import type { MarginCheck } from "../assessment.ts";
import { factsOf } from "../facts/facts.ts";
import { anchorChecks } from "../margin/anchors.ts";
import { baseCases } from "../margin/cases.ts";
import { type MarginInputs, marginInputs } from "../margin/inputs.ts";
import { slabChecks } from "../margin/slab.ts";
import { type HeightLoads, loadsByHeight } from "./by-height.ts";
import { type FloorUnder, type GoverningSide, wordOf } from "./floor-answer.ts";
import { underSupports } from "./under-supports.ts";
import type { VehicleFacts } from "./vehicle-facts.ts";

/** The lift's own margin, with the vehicle's weight and place instead of the rated load. */
export const floorUnder = (job: Job, facts: VehicleFacts): FloorUnder | Unable => {
  const carried = jobFor(job, facts);
  if (carried.lift.kind !== "two-post") return underSupports(carried, facts);
  const found = factsOf(carried);
  const inputs = marginInputs(carried, found, "worst");
  if (isUnable(inputs)) return inputs;
  const offsets = [...new Set(facts.offset)];
  const heights: HeightLoads[] = [];
  const checks = new Map<string, MarginCheck>();
  const unable: Unable[] = [];
  const worst = { left: 0, right: 0 };
  for (const foreAft of offsets) {
    const rows = loadsByHeight(inputs, foreAft);
    if (isUnable(rows)) return rows;
    if (foreAft === farther(offsets)) heights.push(...rows);
    const judged = checksAt(carried, { ...inputs, duty: { ...inputs.duty, foreAft } }, found);
    if (isUnable(judged)) return judged;
    unable.push(...judged.unable);
    for (const side of ["left", "right"] as const) worst[side] = Math.max(worst[side], judged.worst[side]);
    for (const check of judged.checks) {
      const before = checks.get(check.id);
      if (!before || check.ratio > before.ratio) checks.set(check.id, check);
    }
  }
  const sorted = [...checks.values()].filter(({ weight }) => weight === "limit").toSorted((a, b) => b.ratio - a.ratio);
  return {
    heights,
    checks: sorted,
    word: wordOf(sorted),
    side: sorted.length > 0 ? governing(worst) : undefined,
    unable,
  };
};

const farther = (offsets: readonly number[]): number => offsets.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a));

const checksAt = (job: Job, inputs: MarginInputs, found: ReturnType<typeof factsOf>) => {
  const cases = baseCases(job, inputs, found.bases);
  if (isUnable(cases)) return cases;
  const counted = cases.filter(({ standing }) => standing === "counted");
  const slab = slabChecks(job, inputs, counted, "limit");
  const bases = (["left", "right"] as const).map((side) =>
    anchorChecks(
      job,
      inputs,
      counted.filter((c) => c.side === side),
      "limit",
    ),
  );
  const most = (side: "left" | "right", anchors: readonly MarginCheck[]): number =>
    Math.max(
      0,
      ...[...anchors, ...slab.checks.filter(({ governs }) => governs?.startsWith(side))]
        .filter(({ concrete, weight }) => weight === "limit" && concrete !== "uncracked")
        .map(({ ratio }) => ratio),
    );
  return {
    checks: [...bases.flatMap(({ checks }) => checks), ...slab.checks],
    unable: [...bases.flatMap((base) => base.unable), ...slab.unable],
    worst: { left: most("left", bases[0]!.checks), right: most("right", bases[1]!.checks) },
  };
};

/** Bases within one percent of each other are alike. */
const governing = ({ left, right }: { readonly left: number; readonly right: number }): GoverningSide =>
  Math.abs(left - right) <= 0.01 * Math.max(left, right) ? "both" : left > right ? "left" : "right";

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
