import { pointInPolygon } from "@floorworthy/engine/geometry";
import type { Term } from "@floorworthy/engine/quantities";
import { assumed, defaults, type Job, type Zone } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { basisWords, type End } from "./known.ts";
import { shown, term } from "./print.ts";
import { type CountedReading, isMeasured, readingsAt } from "./readings.ts";

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
  /** readings that count, as read and as counted */
  readonly readings: readonly CountedReading[];
  /** a hole says only "at most" this: the bit dropped before its mark */
  readonly atMost: number | undefined;
  readonly workings: Term | undefined;
}

export const thicknessUnder = (job: Job, base: PlacedBase): BaseThickness => {
  const zone = zoneUnder(job, base);
  if (zone?.thickness.known) {
    const { low, high, basis } = zone.thickness;
    const designed = zone.state === "proposed" || job.floor.state === "to-be-poured";
    const why = `${zone.name}: ${basisWords(basis)}`;
    return {
      ...nothingRead(base, zone),
      thickness: low,
      best: high,
      shown: designed ? "designed" : basis.kind === "stated" ? "named" : "measured",
      why,
      workings: term("t", `thickness of ${zone.name}`, low, "length", job.units, { basis: why }),
    };
  }
  const { valid, refused } = readingsAt(job, base);
  return valid.length > 0 ? fromReadings(job, base, zone, valid, refused) : named(job, base, zone, refused);
};

const nothingRead = (base: PlacedBase, zone: Zone | undefined) => ({
  side: base.side,
  zone,
  refused: [] as readonly string[],
  readings: [] as readonly CountedReading[],
  atMost: undefined,
  workings: undefined as Term | undefined,
});

/** The lowest counts, never the mean. A hole that only says "at most" caps it and shows no least thickness itself. */
const fromReadings = (
  { units }: Job,
  base: PlacedBase,
  zone: Zone | undefined,
  readings: readonly CountedReading[],
  refused: readonly string[],
): BaseThickness => {
  const common = { ...nothingRead(base, zone), refused, readings };
  const sized = readings.filter((r) => r.counted !== undefined);
  const open = readings.filter((r) => r.counted === undefined);
  const atMost = open.length > 0 ? Math.min(...open.map((r) => r.high)) : undefined;
  const lowest = sized.toSorted((a, b) => a.counted! - b.counted!)[0];
  const droppedWhy = `in ${open.length} hole${open.length === 1 ? "" : "s"} the bit dropped before its mark, so only "at most ${shown(atMost ?? 0, "length", units)}" is known: hook the underside there`;
  if (!lowest || (atMost !== undefined && atMost < lowest.counted!))
    return { ...common, thickness: undefined, best: atMost, shown: "unknown", why: droppedWhy, atMost };
  const count = `${sized.length} reading${sized.length === 1 ? "" : "s"}`;
  const less =
    lowest.reading.end === "still-concrete"
      ? `${lowest.reading.method === "drill" ? "the drill stopped" : "it ended"} in concrete there, so it counts as it is`
      : `less what a ${lowest.reading.method} reading may overstate`;
  const layer = readings.some(
    (r) => (r.workings.from?.length ?? 0) > 0 && r.workings.from!.some((t) => t.symbol === "t_l"),
  );
  const why = `lowest of ${count}, ${less}${layer ? "; the layer on the slab does not count" : ""}`;
  return {
    ...common,
    thickness: lowest.counted,
    best: atMost === undefined ? lowest.high : Math.min(lowest.high, atMost),
    shown: isMeasured(lowest.reading) ? "measured" : "named",
    why: open.length > 0 ? `${why}; ${droppedWhy}` : why,
    atMost,
    workings: term("t", `thickness that counts at the ${base.side} base`, lowest.counted!, "length", units, {
      formula: "least of the readings as counted; never the mean",
      basis: why,
      from: sized.map((r) => r.workings),
    }),
  };
};

const named = (job: Job, base: PlacedBase, zone: Zone | undefined, refused: readonly string[]): BaseThickness => {
  const { thickness, state } = job.floor;
  const common = { ...nothingRead(base, zone), refused };
  if (!thickness.known)
    return { ...common, thickness: undefined, best: undefined, shown: "unknown", why: "nobody has measured here" };
  const { low, high, basis } = thickness;
  if (state === "to-be-poured") {
    const why = "as specified for the pour";
    const workings = term("t", "thickness specified for the pour", low, "length", job.units, {
      basis: basisWords(basis),
    });
    return { ...common, thickness: low, best: high, shown: "designed", why, workings };
  }
  const off = defaults.unmeasuredThicknessAllowance;
  const why = `named, not measured: ${off.why}`;
  const counted = low - assumed(off).value;
  return {
    ...common,
    thickness: counted,
    best: high,
    shown: "named",
    why,
    workings: term("t", "thickness that counts of a slab nobody has measured", counted, "length", job.units, {
      formula: "named − tolerance",
      from: [
        term("t", "as named", low, "length", job.units, { basis: basisWords(basis) }),
        term("a", "tolerance at a single place", assumed(off).value, "length", job.units, {
          basis: `assumed: ${off.why}`,
          clause: off.source,
        }),
      ],
    }),
  };
};

/** The last zone that holds the whole base plate; footings and edges do not count. */
export const zoneUnder = (job: Job, base: PlacedBase): Zone | undefined =>
  job.floor.zones.findLast(
    (zone) =>
      (zone.kind === "pad" || zone.kind === "strip" || zone.kind === "slab") &&
      [base.centre, ...base.outline].every((p) => pointInPolygon(p, zone.outline) !== "outside"),
  );

/** Thickness for the margin, mm. */
export const thicknessFor = (under: BaseThickness, end: End): number | undefined =>
  end === "worst" ? under.thickness : under.best;
