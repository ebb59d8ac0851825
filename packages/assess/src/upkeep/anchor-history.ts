import type { WatchVerdict } from "@floorworthy/engine/bolts";
import type { Term } from "@floorworthy/engine/quantities";

/**
 * sound: what moves dies away. retorque-and-look: bring it to its torque, look at the concrete, come back soon.
 * out-of-service: nothing is lifted. not-read: nobody has read it. not-judged: a stop stands, and calm rounds would be false
 * comfort.
 */
export type AnchorAnswer = "sound" | "retorque-and-look" | "out-of-service" | "not-read" | "not-judged";

/** One anchor over the years. Plain data; lengths mm, angles rad, torques N·mm. */
export interface AnchorHistory {
  readonly anchor: string;
  readonly answer: AnchorAnswer;
  readonly sentence: string;
  /** what rings, in plain words, most serious first; empty when nothing does */
  readonly alarms: readonly string[];
  readonly verdict: WatchVerdict | "not-judged";
  readonly rounds: readonly RoundReading[];
  /** take-up of the nut over all rounds, and the greatest of it and the stud's rise; undefined without a thread */
  readonly takeUp: number | undefined;
  readonly moved: number | undefined;
  readonly limit: number;
  /** mm a year: fitted slip at the last round, and the fastest the readings allow (95 %) */
  readonly rate: number | undefined;
  readonly fastest: number | undefined;
  readonly setTo: number | undefined;
  readonly terms: readonly Term[];
}

/** One anchor at one round. What was not recorded is undefined. */
export interface RoundReading {
  readonly date: string;
  readonly found: number | undefined;
  readonly turned: number | undefined;
  /** take-up of the nut up to and with this round */
  readonly takeUp: number | undefined;
  readonly rise: number | undefined;
  /** nut turn at which this round rings, from the rounds before it */
  readonly controlLimit: number | undefined;
  readonly control: "within" | "over" | "no-limit";
  /** what the rounds up to this one said */
  readonly verdict: WatchVerdict | "not-judged";
  readonly state: "holds" | "spins" | "snapped" | "missing" | undefined;
  readonly sound: "solid" | "hollow" | undefined;
  readonly note: string | undefined;
}
