import { distance, distanceToBoundary, distanceToPolygon, pointInPolygon } from "@floorworthy/engine/geometry";
import type { Term } from "@floorworthy/engine/quantities";
import { assumed, type Job, type ThicknessReading, thicknessAllowance } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { placedBases } from "../layout.ts";
import { basisWords } from "./known.ts";
import { layerOver } from "./layers.ts";
import { shown, term } from "./print.ts";

/** A reading that speaks of the slab at a base, mm: as read without any layer, and what of it counts. */
export interface CountedReading {
  readonly reading: ThicknessReading;
  readonly low: number;
  readonly high: number;
  /** undefined where the reading shows no least thickness: the bit dropped before its mark */
  readonly counted: number | undefined;
  readonly workings: Term;
}

export interface SortedReadings {
  readonly valid: readonly CountedReading[];
  /** left out, each reason once */
  readonly refused: readonly string[];
}

const IN = 25.4;
/** slabs are often thicker along their edge; common practice, no source */
const EDGE_STRIP = 24 * IN;
/** a hole this near to a plate speaks of the concrete under it, edge or not; common practice, no source */
const AT_THE_PLATE = 12 * IN;

/** The readings that count for one base, and why the others do not. */
export const readingsAt = (job: Job, base: PlacedBase): SortedReadings => {
  const own = job.floor.readings.filter((reading) => belongsTo(job, reading, base));
  const sorted = own.map((reading) => sortReading(job, reading, base));
  const kept = sorted.flatMap((r) => (typeof r === "string" ? [] : [r]));
  const measured = kept.filter(({ reading }) => isMeasured(reading));
  const counting = measured.length > 0 ? measured : kept;
  const { inside, edge } = partEdge(job, counting, base);
  const refused = [
    ...sorted.filter((r) => typeof r === "string"),
    ...(counting.length < kept.length
      ? ["what a drawing or an edge shows does not count beside a measured reading"]
      : []),
    ...edge.map(
      ({ low }) =>
        `${shown(low, "length", job.units)} read within 2 ft of the slab's edge, where slabs are often thicker: left out`,
    ),
  ];
  return { valid: inside, refused: [...new Set(refused)] };
};

/** Readings between the bases: they say nothing under a base, and something of the slab. */
export const middleReadings = (job: Job, base: PlacedBase): readonly CountedReading[] =>
  job.floor.readings
    .filter((reading) => reading.near === "middle" && isMeasured(reading))
    .map((reading) => sortReading(job, reading, base))
    .flatMap((r) => (typeof r === "string" ? [] : [r]));

/** Whether somebody measured, rather than looked at a paper or an edge. */
export const isMeasured = ({ method }: ThicknessReading): boolean => method !== "drawing" && method !== "edge-look";

const sortReading = (job: Job, reading: ThicknessReading, base: PlacedBase): CountedReading | string => {
  const { at } = reading;
  if (reading.place === "thickened-edge" || reading.near === "edge")
    return "a reading at the thickened edge says nothing about the slab";
  const other = at && elsewhere(job, at, base);
  if (other) return `a reading in ${other} says nothing about the concrete under this base`;
  if (!reading.thickness.known) return "a hole without a thickness written down does not count";
  const layer = layerOver(job, reading, base);
  if (layer.kind === "unknown")
    return `a reading through a ${layer.words} nobody has measured does not count: only the slab under it carries`;
  return countedReading(job, reading, layer.kind === "known" ? layer : undefined);
};

/** A zone of its own that holds the reading's place but not the base's. */
const elsewhere = (job: Job, at: NonNullable<ThicknessReading["at"]>, base: PlacedBase): string | undefined =>
  job.floor.zones.find(
    (zone) =>
      zone.state === "standing" &&
      zone.kind !== "topping" &&
      zone.kind !== "slab" &&
      pointInPolygon(at, zone.outline) !== "outside" &&
      pointInPolygon(base.centre, zone.outline) === "outside",
  )?.name;

/** By what was written of its place; by its coordinates where only those are known; else to every base. */
const belongsTo = (job: Job, reading: ThicknessReading, base: PlacedBase): boolean => {
  if (reading.near === "edge" || reading.place === "thickened-edge") return true;
  if (reading.near === "middle") return false;
  if (reading.near === "left" || reading.near === "right") return reading.near === sideOf(job, base);
  const { at } = reading;
  if (!at) return true;
  const others = placedBases(job).map(({ centre }) => distance(at, centre));
  return distance(at, base.centre) <= Math.min(...others) + TIE;
};

const TIE = 1e-6;

/** The half of the lift a base stands in; the posts and frames of other lifts have names of their own. */
const sideOf = ({ position }: Job, { side, centre }: PlacedBase): string =>
  side === "left" || side === "right" || !position
    ? side
    : distance(centre, position.left) <= distance(centre, position.right)
      ? "left"
      : "right";

/** A reading near the slab's edge and away from the plate never helps: it counts only where it is the thinnest. */
const partEdge = (job: Job, readings: readonly CountedReading[], base: PlacedBase) => {
  const { outline } = job.bay;
  const atEdge = ({ reading: { at } }: CountedReading): boolean =>
    at !== undefined &&
    outline !== undefined &&
    distanceToBoundary(at, outline) < EDGE_STRIP &&
    (base.outline.length < 3 ? distance(at, base.centre) : distanceToPolygon(at, base.outline)) > AT_THE_PLATE;
  const away = readings.filter((r) => !atEdge(r));
  const thinnest = Math.min(...away.map((r) => r.low));
  const inside = readings.filter((r) => !atEdge(r) || r.low < thinnest);
  return { inside, edge: readings.filter((r) => !inside.includes(r)) };
};

const endWords = {
  through: "through",
  "still-concrete": "still concrete",
  dropped: "dropped before the mark",
} as const;

const countedReading = (
  { units }: Job,
  reading: ThicknessReading,
  layer: { readonly thickness: number; readonly words: string } | undefined,
): CountedReading | string => {
  const { thickness, method, end } = reading;
  if (!thickness.known) return "a hole without a thickness written down does not count";
  const over = layer?.thickness ?? 0;
  const [low, high] = [thickness.low - over, thickness.high - over];
  if (low <= 0) return "a reading that is all topping or tile shows no slab";
  const allowance = end === "through" ? mayOverstate(method, low) : 0;
  const counted = end === "dropped" ? undefined : Math.max(0, low - allowance);
  const workings = term(
    "tᵢ",
    `${method} reading, ${endWords[end]}${end === "through" ? "" : end === "dropped" ? ": at most this" : ": at least this"}`,
    counted ?? high,
    "length",
    units,
    {
      formula: `read${layer ? ` − ${layer.words}` : ""}${allowance > 0 ? " − what the method may overstate" : ""}`,
      basis: basisWords(thickness.basis),
      from: [
        term("t", "as read", thickness.low, "length", units, { basis: reading.note ?? basisWords(thickness.basis) }),
        ...(layer ? [term("t_l", `${layer.words} on the slab, not counted`, over, "length", units)] : []),
        ...(allowance > 0
          ? [term("a", `allowance of a ${method} reading`, allowance, "length", units, allowanceBorn(method))]
          : []),
      ],
    },
  );
  return { reading, low, high, counted, workings };
};

const allowanceBorn = (method: ThicknessReading["method"]) => {
  const { why, source } = thicknessAllowance[method];
  return { basis: `assumed: ${why}`, clause: source };
};

/** mm; some methods err by a share of the reading */
const mayOverstate = (method: ThicknessReading["method"], reading: number): number => {
  const given = thicknessAllowance[method];
  return given.unit === "%" ? (reading * given.value) / 100 : assumed(given).value;
};
