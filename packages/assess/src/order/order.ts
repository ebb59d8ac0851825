import type { Check, Term } from "@floorworthy/engine/quantities";
import type { BarMat } from "./bar-mats.ts";
import type { PourPart } from "./pour-parts.ts";

export type OrderGroup = "concrete" | "steel" | "ground" | "edges and joints" | "old slab";

/** What something costs, in the job's own currency. */
export interface Cost {
  readonly amount: number;
  /** the price it was reckoned with, as written: "190 per yd³" */
  readonly at: string;
  /** `invented`: no quote stands in the job, a round figure stands in */
  readonly basis: "quoted" | "invented";
}

/** One thing to get. */
export interface OrderLine {
  readonly id: string;
  readonly group: OrderGroup;
  readonly what: string;
  /** what the work takes, unfolded */
  readonly takes: Term;
  /** what is bought, in whole pieces where it is sold by the piece */
  readonly buy: Term;
  /** "bars of 20 ft", "sheets 8 × 15 ft", "" */
  readonly sold: string;
  readonly note: string;
  readonly cost: Cost | undefined;
}

/** One figure of the mix and on whose word it stands. */
export interface MixLine {
  readonly id: string;
  readonly what: string;
  readonly words: string;
  readonly basis: string;
}

export interface BagsOrTruck {
  /** what is better here, in a sentence */
  readonly sentence: string;
  readonly better: "truck" | "bags";
  /** weight of a bag, as written */
  readonly bag: string;
  /** bags for the net volume and for the volume with waste */
  readonly net: Term;
  readonly withWaste: Term;
  /** can the largest piece be placed before its first concrete sets? */
  readonly guard: Check;
  readonly mixers: number | "none";
  readonly truckCost: Cost;
  readonly bagsCost: Cost;
}

/** Everything one pour needs. */
export interface Order {
  readonly title: string;
  /** `job`: what the job draws; otherwise the id of the remedy that is priced */
  readonly pours: string;
  readonly parts: readonly PourPart[];
  readonly net: Term;
  readonly withWaste: Term;
  readonly ordered: Term;
  readonly loads: Term;
  readonly bags: BagsOrTruck;
  readonly mix: readonly MixLine[];
  readonly mats: readonly BarMat[];
  /** steel that holds the largest panel together, per width; undefined where no slab is poured */
  readonly drag: Term | undefined;
  readonly lines: readonly OrderLine[];
  readonly total: { readonly amount: number; readonly currency: string; readonly invented: "some" | "none" };
  readonly warnings: readonly string[];
}
