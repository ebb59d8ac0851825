import { currencyOf, type inventedPrices, type Job, priceOf } from "@floorworthy/job";
import type { Cost, OrderLine } from "./order.ts";

type PriceKey = Exclude<keyof typeof inventedPrices, "fullLoad" | "bagWeight">;

/** `amount` in base units, or pieces where the price is for each. */
export const costOf = (job: Job, key: PriceKey, amount: number): Cost => {
  const { value, written, basis } = priceOf(job, key);
  return { amount: amount * value, at: written, basis };
};

export const costsTogether = (a: Cost, b: Cost): Cost => ({
  amount: a.amount + b.amount,
  at: `${a.at}; ${b.at}`,
  basis: a.basis === "invented" || b.basis === "invented" ? "invented" : "quoted",
});

/** What the list comes to; lines without a price are not in it. */
export const totalOf = (job: Job, lines: readonly OrderLine[]) => ({
  amount: lines.reduce((sum, { cost }) => sum + (cost?.amount ?? 0), 0),
  currency: currencyOf(job),
  invented: lines.some(({ cost }) => cost?.basis === "invented") ? ("some" as const) : ("none" as const),
});
