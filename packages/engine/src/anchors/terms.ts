import { fromBase, type Term, type Unit } from "../quantities/index.ts";

/** A number as it stands in a worked formula: five significant digits. */
export const figure = (value: number): string =>
  Number.isFinite(value) ? String(Number(value.toPrecision(5))) : "no limit";

/** An input, converted from base units to the units of the page. */
export const given = (symbol: string, words: string, base: number, unit: Unit, basis?: string): Term => ({
  symbol,
  words,
  value: fromBase(base, unit),
  unit,
  ...(basis === undefined ? {} : { basis }),
});

/** How a computed number came about. */
export type Origin = Required<Pick<Term, "clause" | "formula" | "worked" | "from">>;

/** A computed number, already in the units of the page. */
export const computed = (symbol: string, words: string, value: number, unit: Unit, origin: Partial<Origin>): Term => ({
  symbol,
  words,
  value,
  unit,
  ...origin,
});
