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

type Units = Job["units"];

/** A length of the trade: inches, or the round millimetres used in their place. */
const either = (inches: number, mm: number): Readonly<Record<Units, number>> => ({
  "inch-pound": inch(inches),
  si: mm,
});

const lengths = {
  barSpacing: either(12, 300),
  /** clear to soil at the ends and below */
  cover: either(3, 75),
  topDepth: either(2, 50),
  leastLap: either(12, 300),
  /** supports this far apart each way */
  chairs: either(48, 1200),
  /** lap of a mesh sheet: one spacing and 2 in, ACI 318 for plain wire, from memory */
  meshLap: either(8, 200),
  /** concrete kept between the bottom of a hole and a bar */
  belowDrill: either(1, 25),
  /** clear of steel beyond a base plate */
  window: either(3, 75),
  dowelSpacing: either(12, 300),
  dowelFromCorner: either(6, 150),
  dowelEmbedded: either(6, 150),
  dowelLength: either(18, 450),
  dowelHoleOver: either(1 / 8, 3),
  baseUnderSlab: either(4, 100),
  baseUnderCutOut: either(6, 150),
  /** ASTM E1643, from memory */
  retarderLap: either(6, 150),
} as const;

export type TradeLength = keyof typeof lengths;

/** mm */
export const tradeLength = (what: TradeLength, units: Units): number => lengths[what][units];

/** Lap over bar diameter. */
export const LAP_DIAMETERS = 40;

export const dowelGluePractice = {
  /** share lost */
  waste: 0.3,
  /** mm³ of glue in a cartridge of 300 mL */
  cartridge: 300_000,
} as const;

/** Loose stone shrinks by this share when compacted. */
export const COMPACTION = 0.2;

export const mixingPractice = {
  /** bags one hand-fed mixer turns out in an hour */
  perHour: 12,
  finishingHours: 0.5,
  /** °C where nothing is said */
  temperature: 20,
} as const;
