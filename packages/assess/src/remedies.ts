import type { Point } from "@floorworthy/engine/geometry";
import type { Job, KnownQuantity, Zone } from "@floorworthy/job";
import type { MarginAnswer, Outcome, Remedy } from "./assessment.ts";
import { shown, term } from "./facts/print.ts";
import { boxOf } from "./layout.ts";
import { firstCrackMargin } from "./margin/practice.ts";

const IN = 25.4;
const PSI = 0.006894757293168361;
const LB = 4.4482216152605;
/** from this rated load the trade pours wider and an engineer's letter is advised; common practice, no source */
const HEAVY = 15_000 * LB;
const WASTE = 1.07;

interface PadPlan {
  readonly id: string;
  readonly title: string;
  readonly zones: readonly Zone[];
  readonly note: string;
}

/** A job as it would be with these pads poured through the old slab. */
const withZones = (job: Job, zones: readonly Zone[]): Job => ({
  ...job,
  floor: { ...job.floor, zones: [...job.floor.zones, ...zones] },
});

/** What to pour where the floor does not do, each with its volume and its own margin. Sizes: common practice, no source. */
export const remediesFor = (job: Job, outcome: Outcome, marginFor: (job: Job) => MarginAnswer): Remedy[] => {
  const asked = job.lift.asks.thickness;
  if (
    !job.position ||
    !job.lift.rated.known ||
    !asked.known ||
    (outcome !== "pour" && outcome !== "shift") ||
    job.floor.state === "to-be-poured"
  )
    return [];
  return plansFor(job, job.lift.rated.value, asked.high).map((plan) => remedyOf(job, plan, marginFor));
};

/** Outline and depth of the concrete that each remedy pours, by the remedies' ids; empty where none can be sized. */
export const remedyZones = (job: Job): readonly { readonly id: string; readonly zones: readonly Zone[] }[] => {
  const { rated, asks } = job.lift;
  return job.position && rated.known && asks.thickness.known ? plansFor(job, rated.value, asks.thickness.high) : [];
};

const plansFor = (job: Job, rated: number, asked: number): PadPlan[] => {
  const { left, right } = job.position!;
  const reach = (rated >= HEAVY ? 36 : 30) * IN;
  const depth = Math.max(12 * IN, asked + 6 * IN);
  const strip = rectangle(
    Math.min(left.x, right.x) - reach,
    Math.min(left.y, right.y) - reach,
    Math.max(left.x, right.x) + reach,
    Math.max(left.y, right.y) + reach,
  );
  const pad = (c: Point, half: number) => rectangle(c.x - half, c.y - half, c.x + half, c.y + half);
  const plans: PadPlan[] = [
    {
      id: "strip",
      title: "One strip under both columns",
      zones: [zoneOf("strip", "strip", strip, depth)],
      note: "The two inward moments cancel in it; nothing overturns.",
    },
    {
      id: "separate-pads",
      title: "Two pads that stand alone",
      zones: [
        zoneOf("left pad", "pad", pad(left, 36 * IN), depth),
        zoneOf("right pad", "pad", pad(right, 36 * IN), depth),
      ],
      note: "Big enough to stand without the old slab's help; smaller pads that are merely dropped in overturn under a free-standing lift.",
    },
  ];
  return plans.filter(({ zones }) => !job.bay.outline || zones.every((zone) => inside(zone, job)));
};

const rectangle = (x0: number, y0: number, x1: number, y1: number): Point[] => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

const inside = (zone: Zone, job: Job): boolean => {
  const [box, bay] = [boxOf(zone.outline), boxOf(job.bay.outline!)];
  return box.x0 >= bay.x0 && box.x1 <= bay.x1 && box.y0 >= bay.y0 && box.y1 <= bay.y1;
};

const designed = (value: number, written: string): KnownQuantity => ({
  known: true,
  value,
  low: value,
  high: value,
  written,
  basis: { kind: "assumed", why: "as it would be poured" },
});

const zoneOf = (name: string, kind: Zone["kind"], outline: Point[], depth: number): Zone => ({
  name,
  kind,
  state: "proposed",
  outline,
  thickness: designed(depth, `${depth / IN} in`),
  sideSlope: 0,
  tied: { known: true, value: "separate", basis: { kind: "assumed", why: "nothing around it is counted" } },
  strength: designed(4000 * PSI, "4000 psi"),
  poured: undefined,
});

const remedyOf = (job: Job, { id, title, zones, note }: PadPlan, marginFor: (job: Job) => MarginAnswer): Remedy => {
  const { units } = job;
  const sizes = zones.map((zone) => {
    const box = boxOf(zone.outline);
    const depth = zone.thickness.known ? zone.thickness.value : 0;
    return { across: box.x1 - box.x0, along: box.y1 - box.y0, depth };
  });
  const volume = sizes.reduce((sum, s) => sum + s.across * s.along * s.depth, 0);
  const size = sizes[0]!;
  const margin = marginFor(withZones(job, zones));
  const ratio = (check: string) => margin.checks.find((c) => c.id === check);
  const crack = ratio("slab-first-crack");
  const ground = ratio("ground-pressure");
  const gross = term("V", "concrete, gross", volume, "volume", units, {
    formula: "n × length × width × depth",
    worked: `${sizes.length} × ${shown(size.across, "length", units)} × ${shown(size.along, "length", units)} × ${shown(size.depth, "length", units)}`,
  });
  const terms = [
    gross,
    ...(crack
      ? [
          term(
            "f_r/σ",
            "modulus of rupture over stress in the new concrete, all cases",
            firstCrackMargin(job) / crack.ratio,
            "plain",
            units,
            { from: [crack.demand, crack.capacity] },
          ),
        ]
      : []),
    ...(ground ? [ground.demand] : []),
  ];
  return {
    id,
    title: `${title}: ${sizes.length > 1 ? `${sizes.length} × ` : ""}${shown(size.across, "length", units)} × ${shown(size.along, "length", units)} × ${shown(size.depth, "length", units)}`,
    detail: `${note} ${margin.sentence}`,
    volume: term("V", "concrete to order, 7 % waste", volume * WASTE, "volume", units, {
      formula: "1.07 V",
      from: [gross],
    }),
    terms,
  };
};
