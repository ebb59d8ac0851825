/**
 * Every unit the trade writes, what it measures, and its size in base units (N, mm, MPa, N/mm³, °C, days, radians).
 * Sizes are exact by definition: 1 in = 25.4 mm, 1 lb = 4.4482216152605 N (lbm 0.45359237 kg × 9.80665 m/s²).
 */
const IN = 25.4;
const LB = 4.4482216152605;
const PSI = LB / (IN * IN);
const KG = 9.80665;

interface UnitDefinition {
  readonly dimension: Dimension;
  /** base units per unit */
  readonly size: number;
  /** base value of zero on this scale (temperatures only) */
  readonly zero?: number;
}

export type Dimension =
  | "length"
  | "area"
  | "volume"
  | "force"
  | "moment"
  | "stress"
  | "subgrade-modulus"
  | "unit-weight"
  | "line-load"
  | "angle"
  | "temperature"
  | "time"
  | "speed"
  | "evaporation"
  | "dosage"
  | "number"
  | "fourth-power-length"
  | "rotational-stiffness"
  | "translational-stiffness";

const define = <T extends Record<string, UnitDefinition>>(table: T): T => table;

/** The printed name of a unit is its key. */
export const units = define({
  mm: { dimension: "length", size: 1 },
  cm: { dimension: "length", size: 10 },
  m: { dimension: "length", size: 1000 },
  in: { dimension: "length", size: IN },
  ft: { dimension: "length", size: 304.8 },
  yd: { dimension: "length", size: 914.4 },
  "mm²": { dimension: "area", size: 1 },
  "m²": { dimension: "area", size: 1e6 },
  "in²": { dimension: "area", size: IN ** 2 },
  "ft²": { dimension: "area", size: (12 * IN) ** 2 },
  "mm³": { dimension: "volume", size: 1 },
  "m³": { dimension: "volume", size: 1e9 },
  "in³": { dimension: "volume", size: IN ** 3 },
  "ft³": { dimension: "volume", size: (12 * IN) ** 3 },
  "yd³": { dimension: "volume", size: (36 * IN) ** 3 },
  N: { dimension: "force", size: 1 },
  kN: { dimension: "force", size: 1000 },
  kg: { dimension: "force", size: KG },
  t: { dimension: "force", size: 1000 * KG },
  lb: { dimension: "force", size: LB },
  kip: { dimension: "force", size: 1000 * LB },
  N·mm: { dimension: "moment", size: 1 },
  N·m: { dimension: "moment", size: 1000 },
  kN·m: { dimension: "moment", size: 1e6 },
  "lb-in": { dimension: "moment", size: LB * IN },
  "lb-ft": { dimension: "moment", size: LB * 12 * IN },
  "kip-in": { dimension: "moment", size: 1000 * LB * IN },
  "kip-ft": { dimension: "moment", size: 1000 * LB * 12 * IN },
  MPa: { dimension: "stress", size: 1 },
  kPa: { dimension: "stress", size: 1e-3 },
  GPa: { dimension: "stress", size: 1e3 },
  "N/mm²": { dimension: "stress", size: 1 },
  "kg/cm²": { dimension: "stress", size: KG / 100 },
  psi: { dimension: "stress", size: PSI },
  ksi: { dimension: "stress", size: 1000 * PSI },
  psf: { dimension: "stress", size: PSI / 144 },
  "N/mm³": { dimension: "subgrade-modulus", size: 1 },
  "MN/m³": { dimension: "subgrade-modulus", size: 1e-3 },
  pci: { dimension: "subgrade-modulus", size: PSI / IN },
  "kN/m³": { dimension: "unit-weight", size: 1e-6 },
  pcf: { dimension: "unit-weight", size: LB / (12 * IN) ** 3 },
  "N/mm": { dimension: "line-load", size: 1 },
  "lb/in": { dimension: "line-load", size: LB / IN },
  "lb/ft": { dimension: "line-load", size: LB / (12 * IN) },
  deg: { dimension: "angle", size: Math.PI / 180 },
  rad: { dimension: "angle", size: 1 },
  turn: { dimension: "angle", size: 2 * Math.PI },
  "°C": { dimension: "temperature", size: 1, zero: 0 },
  "°F": { dimension: "temperature", size: 5 / 9, zero: -160 / 9 },
  min: { dimension: "time", size: 1 / 1440 },
  h: { dimension: "time", size: 1 / 24 },
  d: { dimension: "time", size: 1 },
  week: { dimension: "time", size: 7 },
  month: { dimension: "time", size: 365.25 / 12 },
  year: { dimension: "time", size: 365.25 },
  "m/s": { dimension: "speed", size: 1 },
  "km/h": { dimension: "speed", size: 1 / 3.6 },
  mph: { dimension: "speed", size: 0.44704 },
  "kg/m²/h": { dimension: "evaporation", size: 1 },
  "lb/ft²/h": { dimension: "evaporation", size: 0.45359237 / 0.09290304 },
  "kg/m³": { dimension: "dosage", size: 1 },
  "lb/yd³": { dimension: "dosage", size: 0.45359237 / 0.764554857984 },
  "": { dimension: "number", size: 1 },
  "%": { dimension: "number", size: 0.01 },
  "mm⁴": { dimension: "fourth-power-length", size: 1 },
  "cm⁴": { dimension: "fourth-power-length", size: 1e4 },
  "in⁴": { dimension: "fourth-power-length", size: IN ** 4 },
  "N·mm/rad": { dimension: "rotational-stiffness", size: 1 },
  "kN·m/rad": { dimension: "rotational-stiffness", size: 1e6 },
  "kip-in/rad": { dimension: "rotational-stiffness", size: 1000 * LB * IN },
  "kN/mm": { dimension: "translational-stiffness", size: 1000 },
  "kip/in": { dimension: "translational-stiffness", size: (1000 * LB) / IN },
});

export type Unit = keyof typeof units;

/** From `unit` to base units. */
export const toBase = (value: number, unit: Unit): number => value * units[unit].size + (zeroOf(unit) ?? 0);

/** From base units to `unit`. */
export const fromBase = (value: number, unit: Unit): number => (value - (zeroOf(unit) ?? 0)) / units[unit].size;

/** The dimension a unit measures. */
export const dimensionOf = (unit: Unit): Dimension => units[unit].dimension;

const zeroOf = (unit: Unit): number | undefined => (units[unit] as UnitDefinition).zero;
