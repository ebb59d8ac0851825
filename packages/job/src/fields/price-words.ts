import type { PricedBy } from "./field.ts";

/** How a price is written, by what it is counted by. */
export const priceExample: Readonly<Record<PricedBy, string>> = {
  length: "9 per ft or 30 per m",
  area: "4 per ft² or 45 per m²",
  volume: "185 per yd³ or 240 per m³",
  force: "1.20 per lb or 2.60 per kg",
  time: "65 per h",
  each: "7.50 each",
};
