import { type Point, pointInPolygon } from "@floorworthy/engine/geometry";
import type { Job, ThicknessReading, Zone } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { basisWords, type End } from "./known.ts";

const INCH = 25.4;

/** What a method may overstate the thickness by, mm. Common practice, no source; core: ASTM C174 reads finer. */
export const allowance: Record<ThicknessReading["method"], number> = {
  drill: INCH / 4,
  core: INCH / 16,
  "impact-echo": INCH / 4,
  radar: INCH / 2,
  drawing: (INCH * 3) / 4,
  "edge-look": (INCH * 3) / 4,
};

/** A slab named by a round figure may be 3/4 in thinner at a spot: ACI 117 tolerance, as quoted by ASCC. */
const NAMED_SLAB_ALLOWANCE = (INCH * 3) / 4;

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
    thickness: thickness.low - NAMED_SLAB_ALLOWANCE,
    best: thickness.high,
    shown: "named",
    why: "named, not measured: a slab may be 3/4 in under its name at a spot",
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
          counted: end === "still-concrete" ? thickness.low : thickness.low - allowance[method],
          read: thickness.high,
          method,
        },
      ]
    : [];

/** Thickness for the margin, mm. */
export const thicknessFor = (under: BaseThickness, end: End): number | undefined =>
  end === "worst" ? under.thickness : under.best;
