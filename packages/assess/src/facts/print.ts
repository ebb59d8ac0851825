import { fromBase, type Term, type Unit } from "@floorworthy/engine/quantities";

type Printed = "length" | "stress" | "force" | "moment" | "pressure" | "volume" | "days" | "plain";

const shownUnit: Record<Printed, { readonly "inch-pound": Unit; readonly si: Unit; readonly digits: number }> = {
  length: { "inch-pound": "in", si: "mm", digits: 2 },
  stress: { "inch-pound": "psi", si: "MPa", digits: 3 },
  force: { "inch-pound": "lb", si: "kN", digits: 3 },
  moment: { "inch-pound": "kip-in", si: "kN·m", digits: 3 },
  pressure: { "inch-pound": "psf", si: "kPa", digits: 3 },
  volume: { "inch-pound": "yd³", si: "m³", digits: 3 },
  days: { "inch-pound": "d", si: "d", digits: 3 },
  plain: { "inch-pound": "", si: "", digits: 3 },
};

export type UnitSystem = "inch-pound" | "si";

/** A base-unit value as a sheet prints it, e.g. `5.65 in`, `2,500 psi`. */
export const shown = (value: number, kind: Printed, units: UnitSystem): string => {
  const { digits, ...unitOf } = shownUnit[kind];
  const unit = unitOf[units];
  const inUnit = fromBase(value, unit);
  const text = kind === "length" ? lengthText(inUnit, unit) : groups(significant(inUnit, digits));
  return unit === "" ? text : `${text} ${unit}`;
};

const lengthText = (value: number, unit: Unit): string =>
  unit === "mm" ? groups(Math.round(value)) : groups(Math.round(value * 100) / 100);

const significant = (value: number, digits: number): number => {
  if (value === 0 || !Number.isFinite(value)) return value;
  const scale = 10 ** Math.max(0, digits - 1 - Math.floor(Math.log10(Math.abs(value))));
  return Math.abs(value) >= 10 ** digits ? Math.round(value / 10) * 10 : Math.round(value * scale) / scale;
};

/** Made once: `toLocaleString` would make one for every number. */
const grouped = new Intl.NumberFormat("en-US", { maximumFractionDigits: 6 });
const groups = (value: number): string => grouped.format(value);

/** The unit a term of this kind is shown in. */
export const unitFor = (kind: Printed, units: UnitSystem): Unit => shownUnit[kind][units];

/** A term whose base-unit value is converted to the job's units. */
export const term = (
  symbol: string,
  words: string,
  value: number,
  kind: Printed,
  units: UnitSystem,
  rest: Partial<Omit<Term, "symbol" | "words" | "value" | "unit">> = {},
): Term => {
  const unit = unitFor(kind, units);
  return { symbol, words, value: fromBase(value, unit), unit, ...rest };
};
