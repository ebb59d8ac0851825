import { toBase, type Unit } from "@floorworthy/engine/quantities";
import type { Job, Prices } from "./job.ts";

/** An invented figure that stands in for a quote: money per unit, or a quantity where there is no "per". */
interface InventedPrice {
  readonly value: number;
  readonly unit: Unit | "each";
  readonly what: "price" | "measure";
}

export const INVENTED = "invented, replace with your own quotes";

const price = (value: number, unit: Unit | "each"): InventedPrice => ({ value, unit, what: "price" });

/** Round figures that add up to what such work costs in the trade; none is anybody's quote. */
export const inventedPrices: Readonly<Record<Exclude<keyof Prices, "currency">, InventedPrice>> = {
  concrete: price(190, "yd³"),
  shortLoad: price(150, "each"),
  fullLoad: { value: 5, unit: "yd³", what: "measure" },
  bag: price(7, "each"),
  bagWeight: { value: 80, unit: "lb", what: "measure" },
  bar: price(1.1, "lb"),
  mesh: price(0.6, "ft²"),
  fibre: price(3.5, "lb"),
  dowel: price(9, "each"),
  vapourSheet: price(0.2, "ft²"),
  baseCourse: price(70, "yd³"),
  formwork: price(6, "ft"),
  saw: price(10, "ft"),
  sawCall: price(250, "each"),
  jointSaw: price(2.5, "ft"),
  breakOut: price(4, "ft²"),
  removal: price(60, "yd³"),
  labour: price(60, "h"),
};

export interface PriceTaken {
  /** per base unit (mm, mm², mm³, N, day) or for each */
  readonly value: number;
  /** as written, or as invented: "190 per yd³" */
  readonly written: string;
  readonly basis: "quoted" | "invented";
}

/** The price that counts: the job's own, or the invented one. */
export const priceOf = ({ prices }: Pick<Job, "prices">, key: keyof typeof inventedPrices): PriceTaken => {
  const fact = prices[key];
  if (fact.known) return { value: fact.value, written: fact.written, basis: "quoted" };
  const { value, unit, what } = inventedPrices[key];
  if (unit === "each") return { value, written: `${value} each`, basis: "invented" };
  return what === "price"
    ? { value: value / toBase(1, unit), written: `${value} per ${unit}`, basis: "invented" }
    : { value: toBase(value, unit), written: `${value} ${unit}`, basis: "invented" };
};

export const currencyOf = ({ prices }: Pick<Job, "prices">): string => prices.currency ?? "$";
