import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Remedy, Stop } from "../assessment.ts";
import { type CrackWatch, watchCracks } from "../crack-watch/watch-cracks.ts";
import { anchoring } from "../facts/anchoring.ts";
import { anchorNames } from "../layout.ts";
import { stopsOf } from "../stops/stops.ts";
import { remediesAfterFailure } from "./after-failure.ts";
import type { AnchorHistory } from "./anchor-history.ts";
import { noNuts, sentences, steps, type UpkeepAnswer } from "./answer-words.ts";
import { preloadTerms, torqueSays } from "./preload-terms.ts";
import { calmReasons, failedSides, graveReasons, installed, softReasons } from "./reasons.ts";
import { beforeLifting, lastRound, type NextRound, nextRound } from "./round-due.ts";
import { watchAnchors } from "./watch-anchors.ts";

/** What the years say of one lift. Plain data; the same in the terminal, on paper and as JSON. */
export interface Upkeep {
  readonly title: string;
  readonly today: string;
  readonly answer: UpkeepAnswer;
  readonly sentence: string;
  /** most serious first; never empty */
  readonly reasons: readonly string[];
  /** what to do, in order */
  readonly steps: readonly string[];
  readonly anchors: readonly AnchorHistory[];
  readonly cracks: readonly CrackWatch[];
  readonly lastRound: string | undefined;
  /** undefined where nobody wrote when the lift was set or last read */
  readonly next: NextRound | undefined;
  readonly remedies: readonly Remedy[];
  /** setting torque, preload over the span of K, what is left after ninety days */
  readonly preload: readonly Term[];
  readonly torqueSays: readonly string[];
  /** what could not be judged, and why */
  readonly notJudged: readonly string[];
}

/** The years after for one lift on one day: is it sound, to be re-torqued and looked at, or out of service. Pure; `today` is YYYY-MM-DD. */
export const upkeepOf = (job: Job, today: string): Upkeep => {
  const [anchors, cracks] = [watchAnchors(job), watchCracks(job)];
  const grave = graveReasons(job, anchors, cracks);
  const stops = grave.length > 0 ? [] : stopsOf(job);
  if (stops.length > 0) return stoppedBy(job, today, stops, anchors, cracks);
  const next = grave.length > 0 ? beforeLifting(today) : nextRound(job, today, anchors, cracks);
  const soft = softReasons(anchors, cracks, grave.length > 0 ? undefined : next);
  const answer: UpkeepAnswer =
    grave.length > 0
      ? "out-of-service"
      : lastRound(job) === undefined
        ? "no-readings"
        : soft.length > 0
          ? "retorque-and-look"
          : "sound";
  const noneToRead = answer === "no-readings" && anchoring(job.lift) === "loose";
  return {
    title: job.title,
    today,
    answer,
    sentence: noneToRead ? noNuts : sentences[answer],
    reasons: [...grave, ...soft, ...(grave.length + soft.length === 0 ? calmReasons(job, anchors) : [])].concat(
      answer === "no-readings" && grave.length + soft.length === 0
        ? [
            installed(job)
              ? "No round of the nuts is written down."
              : "The lift is not written down as set, nor any round of its nuts.",
          ]
        : [],
    ),
    steps: noneToRead ? [] : steps[answer],
    anchors,
    cracks,
    lastRound: lastRound(job),
    next,
    remedies: grave.length > 0 ? remediesAfterFailure(job, failedSides(anchors, cracks)) : [],
    preload: preloadTerms(job),
    torqueSays,
    notJudged: notJudged(job, anchors),
  };
};

/** A floor where the tool stops: what was read stays as it is, and nothing of it is called sound. */
const stoppedBy = (
  job: Job,
  today: string,
  stops: readonly Stop[],
  read: readonly AnchorHistory[],
  cracks: readonly CrackWatch[],
): Upkeep => ({
  title: job.title,
  today,
  answer: "stopped",
  sentence: sentences.stopped,
  reasons: [...stops.map(({ reason }) => reason), ...softReasons(read, cracks, undefined)],
  steps: [...steps.stopped, ...stops.map(({ next }) => next)],
  anchors: read.map((anchor) => (anchor.answer === "sound" ? withoutVerdict(anchor) : anchor)),
  cracks,
  lastRound: lastRound(job),
  next: undefined,
  remedies: [],
  preload: preloadTerms(job),
  torqueSays,
  notJudged: notJudged(job, read),
});

const withoutVerdict = (anchor: AnchorHistory): AnchorHistory => ({
  ...anchor,
  answer: "not-judged",
  sentence: `${anchor.anchor} was read; it is not judged while a stop stands.`,
});

const notJudged = (job: Job, anchors: readonly AnchorHistory[]): string[] => [
  ...(job.installation?.date || job.visits.length === 0
    ? []
    : [
        "Nobody wrote when the anchors were set: days are counted from the first round, whose turns count only against the limit.",
      ]),
  ...(job.lift.anchors.torque.known ? [] : ["The setting torque is not known: torque found is not judged."]),
  ...strangeNames(job, anchors),
];

const strangeNames = (job: Job, anchors: readonly AnchorHistory[]): string[] => {
  const holes = anchorNames(job).map((name) => name.toUpperCase());
  const strange = anchors
    .map(({ anchor }) => anchor)
    .filter((name) => holes.length > 0 && !holes.includes(name.toUpperCase()));
  return strange.length > 0
    ? [`Not a hole of this lift: ${strange.join(", ")}. Holes are named ${holes.slice(0, 3).join(", ")} …`]
    : [];
};
