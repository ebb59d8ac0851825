import { type BarSize, barDiameter, barSizes, barWeight } from "@floorworthy/engine/orders";
import { LAP_DIAMETERS, tradeLength } from "./practice.ts";

/** A bar as an order needs it: mm, N per mm. */
export interface Bar {
  readonly size: string;
  readonly diameter: number;
  readonly weight: number;
  /** lap of two bars, mm */
  readonly lap: number;
}

/** 7850 kg/m³, as weight per mm³. */
const STEEL = 7850 * 9.80665e-9;

const lapOf = (diameter: number, numbered: "numbered" | "metric"): number =>
  Math.max(tradeLength("leastLap", numbered === "metric" ? "si" : "inch-pound"), LAP_DIAMETERS * diameter);

const isNumbered = (size: string): size is BarSize => (barSizes as readonly string[]).includes(size);

/** "#4", "12 mm", "Ø12" or "T12"; undefined for a size nobody sells. */
export const barOf = (written: string): Bar | undefined => {
  const size = written.trim().replace(/^(?:no\.?|nr\.?)\s*/i, "#");
  if (isNumbered(size)) {
    const diameter = barDiameter(size);
    return { size, diameter, weight: barWeight(size), lap: lapOf(diameter, "numbered") };
  }
  const mm = /^(?:Ø|ø|D|T|M)?\s*(\d{1,2})\s*(?:mm)?$/i.exec(size)?.[1];
  if (!mm || Number(mm) < 5 || Number(mm) > 40) return undefined;
  const diameter = Number(mm);
  return {
    size: `${diameter} mm`,
    diameter,
    weight: ((Math.PI * diameter ** 2) / 4) * STEEL,
    lap: lapOf(diameter, "metric"),
  };
};
