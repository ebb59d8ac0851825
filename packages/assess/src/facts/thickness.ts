import { type Point, pointInPolygon } from "@floorworthy/engine/geometry";
import { assumed, defaults, type Job, type ThicknessReading, thicknessAllowance, type Zone } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { basisWords, type End } from "./known.ts";

/** How thick the concrete under one base counts, mm, and why. */
export interface BaseThickness {
  readonly side: string;
  /** undefined where nobody knows */
  readonly thickness: number | undefined;
  /** what it may be at best, mm */
  readonly best: number | undefined;
  readonly shown: "measured" | "designed" | "named" | "unknown";
  readonly why: string;
  readonly zone: Zone | undefined;
  /** readings left out, with the reason */
  readonly refused: readonly string[];
}

export const thicknessUnder = (job: Job, base: PlacedBase): BaseThickness => {
  const zone = zoneUnder(job, base);
  if (zone?.thickness.known) {
    const { low, high, basis } = zone.thickness;
    const designed = zone.state === "proposed" || job.floor.state === "to-be-poured";
    return {
      side: base.side,
      thickness: low,
      best: high,
      shown: designed ? "designed" : basis.kind === "stated" ? "named" : "measured",
      why: `${zone.name}: ${basisWords(basis)}`,
      zone,
      refused: [],
    };
  }
  const { valid, refused } = readingsAt(job, base);
  const depths = valid.flatMap((reading) => countedDepth(reading));
  if (depths.length > 0) {
    const lowest = depths.reduce((a, b) => (b.counted < a.counted ? b : a));
    return {
      side: base.side,
      thickness: lowest.counted,
      best: lowest.read,
      shown: "measured",
      why: `lowest of ${depths.length} reading${depths.length === 1 ? "" : "s"}, less what a ${lowest.method} reading may overstate`,
      zone,
      refused,
    };
  }
  return named(job, base, zone, refused);
};

const named = (job: Job, base: PlacedBase, zone: Zone | undefined, refused: string[]): BaseThickness => {
  const { thickness, state } = job.floor;
  const common = { side: base.side, zone, refused };
  if (!thickness.known) {
    return { ...common, thickness: undefined, best: undefined, shown: "unknown", why: "nobody has measured here" };
  }
  if (state === "to-be-poured") {
    return {
      ...common,
      thickness: thickness.low,
      best: thickness.high,
      shown: "designed",
      why: "as specified for the pour",
    };
  }
  return {
    ...common,
    thickness: thickness.low - assumed(defaults.unmeasuredThicknessAllowance).value,
    best: thickness.high,
    shown: "named",
    why: `named, not measured: ${defaults.unmeasuredThicknessAllowance.why}`,
  };
};

/** The last zone that holds the whole base plate (or, failing that, its centre); footings and edges do not count. */
export const zoneUnder = (job: Job, base: PlacedBase): Zone | undefined =>
  job.floor.zones.findLast(
    (zone) =>
      (zone.kind === "pad" || zone.kind === "strip" || zone.kind === "slab") &&
      [base.centre, ...base.outline].every((p) => pointInPolygon(p, zone.outline)),
  );

const readingsAt = (job: Job, base: PlacedBase): { valid: ThicknessReading[]; refused: string[] } => {
  const valid: ThicknessReading[] = [];
  const refused: string[] = [];
  for (const reading of job.floor.readings) {
    if (!belongsTo(job, reading, base)) continue;
    if (reading.place === "thickened-edge" || reading.near === "edge") {
      refused.push("a reading at the thickened edge says nothing about the slab");
    } else valid.push(reading);
  }
  return { valid, refused };
};

const belongsTo = (job: Job, reading: ThicknessReading, base: PlacedBase): boolean => {
  if (reading.near === "edge" || reading.place === "thickened-edge") return true;
  if (reading.near === "left" || reading.near === "right") return reading.near === base.side;
  if (reading.near === "middle") return false;
  if (!reading.at || !job.position) return true;
  const other = base.side === "left" ? job.position.right : job.position.left;
  return far(reading.at, base.centre) <= far(reading.at, other);
};

const far = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);

interface CountedDepth {
  readonly counted: number;
  readonly read: number;
  readonly method: string;
}

/** `still-concrete` is a lower bound and counts as it is; a bit that dropped early is an upper bound and counts less. */
const countedDepth = ({ thickness, method, end }: ThicknessReading): CountedDepth[] =>
  thickness.known
    ? [
        {
          counted: end === "still-concrete" ? thickness.low : thickness.low - mayOverstate(method, thickness.low),
          read: thickness.high,
          method,
        },
      ]
    : [];

/** mm; some methods err by a share of the reading */
const mayOverstate = (method: ThicknessReading["method"], reading: number): number => {
  const given = thicknessAllowance[method];
  return given.unit === "%" ? (reading * given.value) / 100 : assumed(given).value;
};

/** Thickness for the margin, mm. */
export const thicknessFor = (under: BaseThickness, end: End): number | undefined =>
  end === "worst" ? under.thickness : under.best;
