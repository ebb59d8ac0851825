import { sawWindow, settingWindow, type Window } from "@floorworthy/engine/concrete";
import { type Term, toBase } from "@floorworthy/engine/quantities";
import type { Job, PourWeather } from "@floorworthy/job";

/** Hours after placing, from - to, at the warmer and the colder of air and concrete. */
export interface HoursWindow {
  readonly from: Term;
  readonly to: Term;
  readonly words: string;
}

export interface PourWindows {
  /** on what temperatures the hours rest */
  readonly basis: string;
  readonly set: HoursWindow;
  readonly sawWet: HoursWindow;
  readonly sawEarlyEntry: HoursWindow;
}

const ORDINARY = toBase(73, "°F");

const hours = (n: number): string => String(n < 10 ? Math.round(n * 2) / 2 : Math.round(n));

const spanning = (warm: Window, cold: Window, symbol: string, what: string, clause: string): HoursWindow => {
  const end = (value: number, words: string): Term => ({
    symbol,
    words,
    value,
    unit: "h",
    clause,
    formula: "hours at 73 °F × 2^((73 − T)/20)",
  });
  const [from, to] = [warm.from, cold.to];
  return {
    from: end(from, `${what}, from`),
    to: end(to, `${what}, to`),
    words: `${hours(from)} to ${hours(to)} h`,
  };
};

/** Set and saw windows; on an ordinary day where nobody has told the temperatures. */
export const windowsOf = (job: Job, { air, concrete }: PourWeather): PourWindows => {
  const spell = job.pour?.temperatures[0]?.mean;
  const known = [air, concrete].flatMap((fact) => (fact.known ? [fact.value] : []));
  const told = known.length > 0 ? known : spell?.known ? [spell.low, spell.high] : [ORDINARY];
  const [warm, cold] = [Math.max(...told), Math.min(...told)];
  const rule = "setting doubles for each 20 °F colder (practice quoting ACI 305R/306R)";
  const saw = `Concrete Construction on saw timing; ${rule}`;
  return {
    basis:
      known.length > 0
        ? "the weather told"
        : spell?.known
          ? "the first spell of the job"
          : "an ordinary day of 73 °F (23 °C)",
    set: spanning(settingWindow(warm), settingWindow(cold), "ts", "first set", `common practice, no source; ${rule}`),
    sawWet: spanning(sawWindow(warm, "wet"), sawWindow(cold, "wet"), "tw", "wet saw", saw),
    sawEarlyEntry: spanning(
      sawWindow(warm, "early-entry"),
      sawWindow(cold, "early-entry"),
      "te",
      "early-entry saw",
      saw,
    ),
  };
};
