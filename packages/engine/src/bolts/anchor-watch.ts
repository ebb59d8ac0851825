import { type Unable, unable } from "../quantities/index.ts";
import { fastestSlip, fitMovement, type MovementFit, type ReadingError, usualReadingError } from "./movement-fit.ts";
import { retainedSpan } from "./relaxation.ts";
import { nutTravel } from "./threads.ts";
import { type Movement, totalMovement, type Visit } from "./visit.ts";

/** What one anchor is watched against. Lengths in mm, torque in N·mm. */
export interface WatchRules {
  readonly pitch: number;
  /** total take-up or rise beyond which the anchor is never called sound */
  readonly limit: number;
  /** torque it was set to; left out: torque found is not judged */
  readonly settingTorque?: number;
  /** days until the next visit, over which a possible slip is carried on */
  readonly ahead: number;
  readonly error: ReadingError;
}

/** Limit 1/16 in, a year ahead: common practice, no source. The maker's own limit goes before. */
export const usualWatchRules = (pitch: number): WatchRules => ({
  pitch,
  limit: 25.4 / 16,
  ahead: 365,
  error: usualReadingError,
});

/**
 * settling: the movement dies away as a relaxing anchor's does, and stays within the limit until the next visit.
 * slipping: it goes on or grows in a way that no dying away explains. beyond-limit: it has moved further than the limit,
 * whatever the pattern. undecided: the readings cannot tell, or could still reach the limit.
 */
export type WatchVerdict = "settling" | "slipping" | "beyond-limit" | "undecided";

export type WatchReason =
  | "dies-away"
  | "hardly-moves"
  | "goes-on"
  | "grows"
  | "take-up-over-limit"
  | "rise-over-limit"
  | "too-few-visits"
  | "either-fits"
  | "could-reach-limit"
  | "torque-lower-than-relaxation-leaves";

export interface AnchorWatch {
  readonly verdict: WatchVerdict;
  readonly reasons: readonly WatchReason[];
  readonly movement: Movement;
  /** undefined with fewer than two visits that were read */
  readonly fit?: {
    readonly both: MovementFit;
    readonly settlingMisfit: number;
    readonly slipMisfit: number;
    /** mm per day at the last visit: fitted, and the fastest the readings allow (95 %) */
    readonly rate: number;
    readonly fastest: number;
  };
}

/** A rejected pattern fits worse by this much: 2.6 standard deviations against slip alone, 1.64 against settling alone. */
const slipShown = 2.6 ** 2;
const dyingShown = 1.64 ** 2;

/**
 * Tells relaxation that dies away from slip that goes on, from the visits so far (two are enough, more are better).
 * Method: least-squares fits of settling alone, slip alone and both (movement-fit); one pattern is called when the other is
 * rejected by its misfit. Error rates on made-up histories: bench/anchor-watch. Fails: visits out of order.
 */
export const watchAnchor = (visits: readonly Visit[], rules: WatchRules): AnchorWatch | Unable => {
  const wrong = visits.find((v, i) => !(v.day > (visits[i - 1]?.day ?? 0)) || (v.nutTurn ?? 0) < 0);
  if (wrong !== undefined)
    return unable("anchor watch", `the visit of day ${wrong.day} is out of order, repeated, or has a nut turned back`);
  const movement = totalMovement(visits, rules.pitch);
  const over: WatchReason[] = [
    ...(movement.takeUp > rules.limit ? (["take-up-over-limit"] as const) : []),
    ...(visits.some((v) => (v.rise ?? 0) > rules.limit) ? (["rise-over-limit"] as const) : []),
  ];
  const read = visits.filter((v) => v.nutTurn !== undefined || v.rise !== undefined);
  if (read.length < 2)
    return over.length > 0
      ? { verdict: "beyond-limit", reasons: over, movement }
      : { verdict: "undecided", reasons: ["too-few-visits"], movement };
  return { ...judge(read, visits, rules, movement, over), movement };
};

const judge = (
  read: readonly Visit[],
  visits: readonly Visit[],
  rules: WatchRules,
  movement: Movement,
  over: readonly WatchReason[],
): Omit<AnchorWatch, "movement"> => {
  const { pitch, error } = rules;
  const both = fitMovement(read, pitch, error, "both")!;
  const settlingMisfit = fitMovement(read, pitch, error, "settling")!.misfit;
  const slipMisfit = fitMovement(read, pitch, error, "slip")!.misfit;
  const scale = Math.max(1, both.misfit / Math.max(1, read.length - 2));
  const fastest = fastestSlip(read, pitch, error, both.misfit + 1.64 ** 2 * scale);
  const fit = { both, settlingMisfit, slipMisfit, rate: both.rate, fastest };

  if (settlingMisfit - both.misfit > slipShown * scale) {
    const average = both.slipped / read[read.length - 1]!.day;
    return { verdict: "slipping", reasons: [both.rate > 1.2 * average ? "grows" : "goes-on", ...over], fit };
  }
  if (over.length > 0) return { verdict: "beyond-limit", reasons: over, fit };

  const moved = Math.max(movement.takeUp, movement.rise ?? 0);
  const doubts: WatchReason[] = [
    ...(moved + fastest * rules.ahead > rules.limit ? (["could-reach-limit"] as const) : []),
    ...(torqueTooLow(visits, rules.settingTorque) ? (["torque-lower-than-relaxation-leaves"] as const) : []),
  ];
  const quiet = hardlyMoves(read, pitch, error);
  const dies = slipMisfit - both.misfit > dyingShown * scale;
  if (!quiet && !dies) return { verdict: "undecided", reasons: ["either-fits", ...doubts], fit };
  if (doubts.length > 0) return { verdict: "undecided", reasons: doubts, fit };
  return { verdict: "settling", reasons: [dies ? "dies-away" : "hardly-moves"], fit };
};

/** The last two visits show no more than reading error. */
const hardlyMoves = (read: readonly Visit[], pitch: number, error: ReadingError): boolean => {
  const [before, last] = [read[read.length - 2]!, read[read.length - 1]!];
  const turned = nutTravel((before.nutTurn ?? 0) + (last.nutTurn ?? 0), pitch);
  const risen = last.rise === undefined ? 0 : last.rise - (before.rise ?? 0);
  const turns = [before, last].filter((v) => v.nutTurn !== undefined).length;
  return turned <= 1.64 * nutTravel(error.nutTurn, pitch) * Math.sqrt(turns) && risen <= 1.64 * Math.SQRT2 * error.rise;
};

const torqueTooLow = (visits: readonly Visit[], settingTorque: number | undefined): boolean => {
  if (settingTorque === undefined) return false;
  const last = visits[visits.length - 1]!;
  const restored = visits.slice(0, -1).findLast((v) => v.nutTurn !== undefined)?.day ?? 0;
  return last.torqueFound !== undefined && last.torqueFound / settingTorque < retainedSpan(last.day - restored).low;
};
