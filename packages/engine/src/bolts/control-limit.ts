import type { WatchRules } from "./anchor-watch.ts";
import { fitMovement } from "./movement-fit.ts";
import { nutTravel } from "./threads.ts";
import type { Visit } from "./visit.ts";

/** What a settling anchor should show at a visit, rad of nut turn: expected, and the limit three errors above. */
export interface ControlLimit {
  readonly expected: number;
  readonly limit: number;
}

/**
 * The control limit for a visit on `day` from the visits before it: settling alone fitted to them, carried on to `day`,
 * plus three reading errors. Without an earlier visit there is none.
 */
export const controlLimit = (before: readonly Visit[], day: number, rules: WatchRules): ControlLimit | undefined => {
  const read = before.filter((v) => v.nutTurn !== undefined);
  const last = read[read.length - 1];
  if (last === undefined || day <= last.day) return undefined;
  const fit = fitMovement(read, rules.pitch, rules.error, "settling")!;
  const scale = fit.settled / Math.log(1 + last.day / fit.shape.tau);
  const travel = scale * Math.log((fit.shape.tau + day) / (fit.shape.tau + last.day));
  const expected = travel / nutTravel(1, rules.pitch);
  return { expected, limit: expected + 3 * Math.hypot(rules.error.nutTurn, rules.error.turnFraction * expected) };
};
