import {
  type AnchorWatch,
  controlLimit,
  nutTravel,
  type Thread,
  type WatchRules,
  watchAnchor,
} from "@floorworthy/engine/bolts";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { findingsOf } from "./anchor-answer.ts";
import type { AnchorHistory, RoundReading } from "./anchor-history.ts";
import { type AnchorLog, anchorLogs } from "./anchor-log.ts";
import { movementTerms } from "./movement-terms.ts";
import { movementLimit, rulesFor, threadOf } from "./watch-rules.ts";

/**
 * whole: the verdict at every round, for the trend; last: only what the answer needs.
 */
export type WatchDetail = "whole" | "last";

/** Every anchor of the lift, from the rounds so far; two are enough, more are better. Method: engine/bolts. */
export const watchAnchors = (job: Job, detail: WatchDetail = "whole"): AnchorHistory[] => {
  const thread = threadOf(job);
  return anchorLogs(job).map((log) => historyOf(job, log, isUnable(thread) ? undefined : thread, detail));
};

const historyOf = (job: Job, log: AnchorLog, thread: Thread | undefined, detail: WatchDetail): AnchorHistory => {
  const rules = thread && rulesFor(job, thread, log);
  const watch = rules && log.rounds.length > 0 ? seen(log, log.visits.length, rules) : undefined;
  const rounds = roundsOf(log, rules, watch, detail);
  const before = thread ? nutTravel(log.turnedBefore, thread.pitch) : 0;
  const takeUp = watch && watch.movement.takeUp + before;
  const rises = log.visits.flatMap(({ rise }) => rise ?? []);
  const moved = takeUp === undefined ? undefined : Math.max(takeUp, ...rises);
  const limit = movementLimit(job).value;
  const findings = findingsOf({
    anchor: log.anchor,
    units: job.units,
    rounds,
    watch,
    moved: moved ?? 0,
    limit,
    setTo: log.setTo,
    ahead: rules?.ahead ?? 365,
  });
  const worst = findings[0]!;
  return {
    anchor: log.anchor,
    answer: worst.answer,
    sentence: worst.words,
    alarms: findings.filter(({ answer }) => answer !== "sound" && answer !== "not-read").map(({ words }) => words),
    verdict: watch?.verdict ?? "not-judged",
    rounds,
    takeUp,
    moved,
    limit,
    rate: watch?.fit && watch.fit.rate * 365.25,
    fastest: watch?.fit && watch.fit.fastest * 365.25,
    setTo: log.setTo,
    terms: thread && watch ? movementTerms(job, log, thread, watch, before) : [],
  };
};

/** Rounds are in order by the reading of the job, so that the watch cannot refuse; a repeated day is left out. */
const seen = (log: AnchorLog, count: number, rules: WatchRules): AnchorWatch | undefined => {
  const watch = watchAnchor(log.visits.slice(0, count), rules);
  return isUnable(watch) ? undefined : watch;
};

/** Rounds whose own verdict is worked out again, latest ones; the rest keep their readings. */
const RECENT = 12;

const roundsOf = (
  log: AnchorLog,
  rules: WatchRules | undefined,
  final: AnchorWatch | undefined,
  detail: WatchDetail,
): RoundReading[] => {
  let turned = 0;
  return log.rounds.map(({ date, reading }, i) => {
    const index = log.visits.findIndex((visit) => visit.date === date);
    const visit = log.visits[index];
    turned += reading.turned.known ? reading.turned.value : 0;
    const again = detail === "whole" && i >= log.rounds.length - RECENT;
    const control = rules && visit && again ? controlLimit(log.visits.slice(0, index), visit.day, rules) : undefined;
    const isLast = i === log.rounds.length - 1;
    const sofar = isLast ? final : rules && again ? seen(log, index + 1, rules) : undefined;
    return {
      date,
      found: reading.found.known ? reading.found.value : undefined,
      turned: reading.turned.known ? reading.turned.value : undefined,
      takeUp: rules && nutTravel(turned, rules.pitch),
      rise: visit?.rise,
      controlLimit: control?.limit,
      control:
        !control || !reading.turned.known ? "no-limit" : reading.turned.value > control.limit ? "over" : "within",
      verdict: sofar?.verdict ?? "not-judged",
      state: reading.state?.known ? reading.state.value : undefined,
      sound: reading.sound?.known ? reading.sound.value : undefined,
      note: reading.note,
    };
  });
};
