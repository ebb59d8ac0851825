import { toBase, type Unit } from "@floorworthy/engine/quantities";
import type { KnownQuantity } from "./fact.ts";
import type { Ground, ThicknessReading } from "./floor.ts";

/** What is taken where nobody knows, why, and on whose word. */
export interface Default {
  readonly value: number;
  readonly unit: Unit;
  /** the range it stands for, in the same unit, where worst and best end are computed */
  readonly low?: number;
  readonly high?: number;
  readonly why: string;
  /** a published source, "common practice, no source", or "from memory" beside the source */
  readonly source: string;
}

const practice = "common practice, no source";

export const defaults = {
  /** mean compressive strength taken for a floor without papers */
  strength: {
    value: 2500,
    unit: "psi",
    low: 2500,
    high: 4000,
    why: "floors of unknown strength are counted as the weakest class built for houses",
    source: "lowest class of IRC Table R402.2, from memory; common practice",
  },
  strengthOfDustingSurface: {
    value: 2000,
    unit: "psi",
    low: 2000,
    high: 3000,
    why: "a surface that scratches with a nail or dusts shows weak or badly cured concrete",
    source: practice,
  },
  /** taken off the name of a slab nobody has measured: "4 in" counts 3 1/4 in */
  unmeasuredThicknessAllowance: {
    value: 0.75,
    unit: "in",
    why: "a single place of a slab may lie this far under its ordered thickness and still be within tolerance",
    source: "ACI 117 tolerances for slabs on ground, as quoted in surveys of cored floors; from memory",
  },
  subgradeModulus: {
    value: 100,
    unit: "pci",
    low: 50,
    high: 200,
    why: "sound natural soil without a test",
    source: "middle of the usual table of soils in ACI 360R, from memory",
  },
  subgradeModulusSoft: {
    value: 50,
    unit: "pci",
    low: 25,
    high: 100,
    why: "foam board and wet clay give twice as much as sound soil",
    source: practice,
  },
  dynamicFactor: {
    value: 1.15,
    unit: "",
    low: 1.1,
    high: 1.25,
    why: "starting, stopping and dropping onto a lock raise the lifted weight by 10 to 25 %; the middle of the usual figures is taken, and the high end is the worst end",
    source: practice,
  },
  evenShare: {
    value: 0.5,
    unit: "",
    why: "each column of a two-post lift carries half of a centred vehicle",
    source: "statics",
  },
  unevenShare: {
    value: 0.6,
    unit: "",
    why: "a vehicle set off the middle, or arms reaching unequally, puts up to three fifths on one column",
    source: practice,
  },
  /** of the rated load, for one column with carriage and arms */
  columnWeightShare: {
    value: 11,
    unit: "%",
    low: 10,
    high: 12,
    why: "two-post columns weigh a tenth to an eighth of what the lift is rated for",
    source: practice,
  },
  /** from the vehicle's middle to the pads; the reach is half the column spacing less this */
  padsFromMiddleCar: {
    value: 26,
    unit: "in",
    low: 22,
    high: 29,
    why: "sills of cars stand this far from the middle",
    source: practice,
  },
  padsFromMiddleTruck: {
    value: 18,
    unit: "in",
    low: 16,
    high: 20,
    why: "rails of frame trucks stand this far from the middle",
    source: practice,
  },
  padSpacingCar: {
    value: 68,
    unit: "in",
    low: 60,
    high: 80,
    why: "lifting points of cars along the vehicle",
    source: practice,
  },
  padSpacingTruck: {
    value: 100,
    unit: "in",
    low: 80,
    high: 120,
    why: "lifting points of frame trucks along the vehicle",
    source: practice,
  },
  pickupHeight: {
    value: 26,
    unit: "in",
    low: 22,
    high: 30,
    why: "carriage height when the wheels leave the floor",
    source: practice,
  },
  fullHeight: { value: 92, unit: "in", low: 80, high: 100, why: "carriage height at full rise", source: practice },
  /** of the vehicle's centre of gravity from the line of the columns */
  centreOffset: {
    value: 12,
    unit: "in",
    low: -12,
    high: 12,
    why: "how far vehicles are usually set off the line of the columns",
    source: practice,
  },
  /** of the lifted weight on the pads nearer to the engine */
  axleShare: {
    value: 0.6,
    unit: "",
    low: 0.4,
    high: 0.6,
    why: "most vehicles carry between 40 and 60 % on an axle",
    source: practice,
  },
  workForce: {
    value: 200,
    unit: "lb",
    low: 0,
    high: 300,
    why: "a long bar on a tight bolt pushes the vehicle with 100 to 200 lb, now and then 300",
    source: practice,
  },
  /** times Ec / min(h, 1.275 √A), the bedding of a steel plate on a slab (engine/contact, beddingModulus) */
  beddingFactor: {
    value: 1,
    unit: "",
    low: 0.1,
    high: 2,
    why: "shims and uneven bedding make it softer, a grouted plate stiffer; both ends are computed",
    source: practice,
  },
  firstCrackMargin: {
    value: 1.4,
    unit: "",
    why: "least margin of the modulus of rupture over the bending stress in common use for slabs on ground (1.4 to 2.0)",
    source: "ACI 360R, from memory",
  },
  waste: {
    value: 7,
    unit: "%",
    low: 5,
    high: 10,
    why: "uneven ground, spills and what stays in the truck",
    source: practice,
  },
} as const satisfies Readonly<Record<string, Default>>;

/** What is taken off a reading for the error of its method; in % of the reading where the unit is %. */
export const thicknessAllowance: Readonly<Record<ThicknessReading["method"], Default>> = {
  drill: { value: 0.25, unit: "in", why: "hooking the underside of a hole errs by 1/8 to 1/4 in", source: practice },
  core: { value: 1 / 16, unit: "in", why: "a core is measured to 1/16 in", source: practice },
  "impact-echo": { value: 10, unit: "%", why: "the wave speed is known to 5 to 10 %", source: practice },
  radar: { value: 10, unit: "%", why: "the speed in the concrete is known to 5 to 10 %", source: practice },
  drawing: { value: 0.75, unit: "in", why: "a drawing is an order, not a measurement", source: "ACI 117, from memory" },
  "edge-look": { value: 0.75, unit: "in", why: "an edge is often thicker than the slab behind it", source: practice },
};

const psf = (value: number, why: string, source = "IRC Table R401.4.1, from memory"): Default => ({
  value,
  unit: "psf",
  why,
  source,
});

type Soil = Extract<Ground["soil"], { readonly known: true }>["value"] | "unknown";

/** Presumptive pressure the ground may carry, by soil. */
export const presumptiveBearing: Readonly<Record<Soil, Default>> = {
  rock: psf(4000, "sedimentary or foliated rock, the weaker rock of the table"),
  gravel: psf(3000, "sandy gravel and gravel"),
  sand: psf(2000, "sand, silty and clayey sand and gravel"),
  silt: psf(1500, "silt and clay"),
  clay: psf(1500, "silt and clay"),
  organic: psf(400, "peat, topsoil and poor fill; have it looked at", practice),
  unknown: psf(1500, "the weakest soil of the table that is not refused"),
};

/** A default as the fact it stands in for, in base units, with its reason. */
export const assumed = (given: Default): KnownQuantity => {
  const { value, unit, low = value, high = value, why } = given;
  const base = (n: number): number => toBase(n, unit);
  return {
    known: true,
    value: base(value),
    low: base(low),
    high: base(high),
    basis: { kind: "assumed", why },
    written: `${value} ${unit}`.trim(),
  };
};
