import type { Dimension, Unit } from "@floorworthy/engine/quantities";

/** One thing asked on a card. Everything may be left open. Plain data: it is kept on the device while the card is in hand. */
export type Question = {
  readonly key: string;
  readonly ask: string;
  readonly hint?: string;
  /** what was read the last time, in words */
  readonly last?: string | undefined;
  /** asked rarely: folded away until wanted */
  readonly rank?: "rare";
} & (
  | {
      readonly kind: "quantity";
      readonly dimension: Dimension;
      /** what a bare number means */
      readonly unit: Unit;
      /** base units: outside of these it is asked once more */
      readonly usual?: readonly [number, number];
      /** answers to tap instead of typing */
      readonly picks?: readonly Pick[];
      /** eighths to tap after the whole inches */
      readonly fractions?: "eighths";
    }
  | { readonly kind: "choice"; readonly choices: readonly Pick[] }
  | { readonly kind: "words"; readonly type?: "text" | "date" | "time"; readonly picks?: readonly Pick[] }
);

export interface Pick {
  readonly value: string;
  readonly words: string;
}

/** Plain data as it goes into a job file. */
export type Plain = string | readonly Plain[] | { readonly [key: string]: Plain };

/** One stop of the round: a hole, a nut, a truck. */
export interface Step {
  /** also stands in the address: "R4" */
  readonly id: string;
  readonly name: string;
  readonly where: readonly string[];
  /** figures to hold a tape or a wrench to */
  readonly figures: readonly { readonly words: string; readonly figure: string }[];
  readonly questions: readonly Question[];
  /** goes into the file beside the answers */
  readonly fixed: { readonly [key: string]: Plain };
  /** of its photographs */
  readonly note: string;
  /** looked through before the first hole; nothing of it goes into the file */
  readonly is?: "looks";
  /** how deep a hole has to be, mm */
  readonly depthAsked?: number;
}

/** A card's plan before what is typed on it has been looked at. */
export type JobPlan = Omit<CardPlan, "faults">;

/** What a card is made of, from the job as it stands with everything on this device. */
export interface CardPlan {
  readonly title: string;
  readonly units: "inch-pound" | "si";
  readonly date: string;
  /** in one sentence */
  readonly sentence: string;
  /**
   * `all`: go round; `recorded-only`: nothing new is begun, what was noted may be corrected; `none`: no place is named
   */
  readonly open: "all" | "recorded-only" | "none";
  /** why not, and what to do instead; large */
  readonly stop: readonly string[];
  /** to be known before the first */
  readonly before: readonly string[];
  readonly steps: readonly Step[];
  /** what the file says of a step as it stands */
  readonly says: { readonly [step: string]: { readonly words: string; readonly weight: "stop" | "look" | "calm" } };
  /** why what is typed on the card cannot be read together with the job; empty where it can */
  readonly faults: readonly string[];
}
