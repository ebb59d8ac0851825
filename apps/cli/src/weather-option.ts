import type { Weather } from "@floorworthy/assess/pour-day";
import { type Dimension, readQuantity } from "@floorworthy/engine/quantities";
import type { Quantity } from "@floorworthy/job";

/** What a person may say of pour day on the command line. */
export interface WeatherOptions {
  readonly air?: string;
  readonly humidity?: string;
  readonly wind?: string;
  readonly concrete?: string;
}

const parts = {
  air: "temperature",
  humidity: "number",
  wind: "speed",
  concrete: "temperature",
} as const satisfies Record<keyof WeatherOptions, Dimension>;

/** The weather given, or every mistake in it. */
export const weatherFrom = (options: WeatherOptions): Weather | { readonly mistakes: readonly string[] } => {
  const mistakes: string[] = [];
  const weather: Partial<Record<keyof WeatherOptions, Quantity>> = {};
  for (const [part, dimension] of Object.entries(parts) as [keyof WeatherOptions, Dimension][]) {
    const text = options[part];
    if (text === undefined) continue;
    const read = readQuantity(text, dimension);
    if (!read.ok) mistakes.push(`--${part} ${read.message} ${read.hint}`);
    else if (part === "humidity" && !(read.value >= 0 && read.value <= 1))
      mistakes.push(`--humidity ${text}: write the share of what the air can hold, such as 45%.`);
    else if (part === "wind" && read.value < 0) mistakes.push(`--wind ${text}: a wind cannot be negative.`);
    else
      weather[part] = {
        known: true,
        value: read.value,
        low: read.value,
        high: read.value,
        basis: { kind: "stated" },
        written: read.written,
      };
  }
  return mistakes.length > 0 ? { mistakes } : weather;
};
