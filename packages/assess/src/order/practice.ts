/** What an order takes where the job says nothing: common practice, no source, unless said. Lengths mm. */
import { toBase } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";

const inch = (n: number): number => toBase(n, "in");

interface SoldSizes {
  /** step in which a plant sells, and a usual truck load, mm³ */
  readonly step: number;
  readonly load: number;
  /** length of bars in stock */
  readonly bar: number;
  readonly barWords: string;
  readonly sheet: { readonly length: number; readonly width: number };
  readonly sheetWords: string;
  readonly retarderRoll: number;
}

/** Loads of 8 to 10 cu yd are usual (trade pages); sheets and rolls differ from yard to yard. */
export const soldAs: Readonly<Record<Job["units"], SoldSizes>> = {
  "inch-pound": {
    step: toBase(0.25, "yd³"),
    load: toBase(9, "yd³"),
    bar: toBase(20, "ft"),
    barWords: "bars of 20 ft",
    sheet: { length: toBase(15, "ft"), width: toBase(8, "ft") },
    sheetWords: "sheets 8 × 15 ft",
    retarderRoll: toBase(10, "ft"),
  },
  si: {
    step: 0.1e9,
    load: 7e9,
    bar: 6000,
    barWords: "bars of 6 m",
    sheet: { length: 5000, width: 2150 },
    sheetWords: "sheets 2.15 × 5 m",
    retarderRoll: 3000,
  },
};

/** From this rated load the trade lays #5 bars. */
export const HEAVY = toBase(15_000, "lb");

export const steelPractice = {
  spacing: inch(12),
  /** clear to soil at the ends and below; from the top */
  cover: inch(3),
  topDepth: inch(2),
  /** lap over bar diameter, at least 12 in */
  lapDiameters: 40,
  leastLap: inch(12),
  /** supports this far apart each way */
  chairs: inch(48),
  /** lap of a mesh sheet: one spacing and 2 in, ACI 318 for plain wire, from memory */
  meshLap: inch(8),
  /** concrete kept between the bottom of a hole and a bar */
  belowDrill: inch(1),
  /** clear of steel beyond a base plate */
  window: { "inch-pound": inch(3), si: 75 },
} as const;

export const dowelPractice = {
  spacing: inch(12),
  fromCorner: inch(6),
  embedded: inch(6),
  length: inch(18),
  holeOver: inch(1 / 8),
  glueWaste: 0.3,
  /** mm³ of glue in a cartridge of 300 mL */
  cartridge: 300_000,
} as const;

export const groundPractice = {
  baseUnderSlab: inch(4),
  baseUnderCutOut: inch(6),
  /** loose stone shrinks by this share */
  compaction: 0.2,
  /** ASTM E1643, from memory */
  retarderLap: inch(6),
} as const;

export const mixingPractice = {
  /** bags one hand-fed mixer turns out in an hour */
  perHour: 12,
  finishingHours: 0.5,
  /** °C where nothing is said */
  temperature: 20,
} as const;
