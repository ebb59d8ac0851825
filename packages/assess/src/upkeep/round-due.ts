import type { Job, Quantity } from "@floorworthy/job";
import type { CrackWatch } from "../crack-watch/watch-cracks.ts";
import { nextLook } from "../crack-watch/watch-cracks.ts";
import { addDays } from "../facts/calendar.ts";
import type { AnchorHistory } from "./anchor-history.ts";

/** One reason for the next round of the nuts, with its day. */
export interface RoundReason {
  readonly id:
    | "maker-first"
    | "maker-every"
    | "first-month"
    | "yearly"
    | "heavier-vehicle"
    | "after-alarm"
    | "limit-near"
    | "crack"
    | "before-lifting";
  /** YYYY-MM-DD */
  readonly date: string;
  readonly words: string;
  readonly basis: string;
}

export interface NextRound {
  readonly date: string;
  /** the day for a reader */
  readonly when: string;
  readonly standing: "overdue" | "today" | "ahead";
  /** the reason whose day comes first */
  readonly reason: RoundReason;
  /** all of them, earliest first */
  readonly reasons: readonly RoundReason[];
}

const practice = "common practice, no source";

/** Practice without a maker's rule: a month after setting, then every one to two years; a month after any alarm. */
const FIRST = 30;
const YEARLY = 365;
const ALARM = 30;
const SOONEST = 7;

/** Every reason for a next round; the earliest wins. Undefined where nobody knows when the lift was set or last looked at. */
export const nextRound = (
  job: Job,
  today: string,
  anchors: readonly AnchorHistory[],
  cracks: readonly CrackWatch[],
): NextRound | undefined => {
  const set = job.installation?.date;
  const last = lastRound(job);
  const reasons = [
    ...firstRound(job, set, last),
    ...laterRound(job, set, last),
    ...heavierVehicles(job, last ?? set),
    ...afterAlarms(anchors, cracks, last),
  ].toSorted((a, b) => a.date.localeCompare(b.date));
  const reason = reasons[0];
  if (!reason) return undefined;
  const standing = reason.date < today ? "overdue" : reason.date === today ? "today" : "ahead";
  const when = `${reason.date}${{ overdue: ", overdue", today: ", today", ahead: "" }[standing]}`;
  return { date: reason.date, when, standing, reason, reasons };
};

/** Out of service: the next look is before anything is lifted, and the rounds begin anew with new anchors. */
export const beforeLifting = (today: string): NextRound => {
  const reason: RoundReason = {
    id: "before-lifting",
    date: today,
    words: "nothing is lifted before it is repaired; with new anchors the rounds begin anew",
    basis: practice,
  };
  return { date: today, when: "before anything is lifted", standing: "today", reason, reasons: [reason] };
};

/** Day of the last round in which an anchor was read. */
export const lastRound = (job: Job): string | undefined =>
  job.visits.findLast(({ readings }) => readings.length > 0)?.date;

const days = (fact: Quantity | undefined): number | undefined => (fact?.known ? fact.low : undefined);

const firstRound = (job: Job, set: string | undefined, last: string | undefined): RoundReason[] => {
  if (!set || last) return [];
  const maker = days(job.lift.anchors.firstRound);
  return maker === undefined
    ? [
        {
          id: "first-month",
          date: addDays(set, FIRST),
          words: "the first month after setting, when most of the pull is lost",
          basis: practice,
        },
      ]
    : [
        {
          id: "maker-first",
          date: addDays(set, maker),
          words: "the maker's first round after setting",
          basis: "the maker's page",
        },
      ];
};

const laterRound = (job: Job, set: string | undefined, last: string | undefined): RoundReason[] => {
  const from = last ?? set;
  if (!from) return [];
  const maker = days(job.lift.anchors.roundEvery);
  return maker === undefined
    ? [
        {
          id: "yearly",
          date: addDays(from, YEARLY),
          words: `one year after the last round; two years, ${addDays(from, 2 * YEARLY)}, is the longest in use`,
          basis: practice,
        },
      ]
    : [
        {
          id: "maker-every",
          date: addDays(from, maker),
          words: "the maker's time between rounds",
          basis: "the maker's page",
        },
      ];
};

/** A vehicle heavier than any lifted before the last round asks for a round before it goes up. */
const heavierVehicles = (job: Job, last: string | undefined): RoundReason[] =>
  last === undefined
    ? []
    : job.vehicles.flatMap((vehicle): RoundReason[] => {
        const { since, weight, name } = vehicle;
        if (!since || since <= last || !weight.known || weight.high <= heaviestBefore(job, last)) return [];
        return [
          {
            id: "heavier-vehicle",
            date: addDays(since, -1),
            words: `before ${name || "a vehicle"} (${weight.written}) is lifted: it is heavier than any before`,
            basis: practice,
          },
        ];
      });

/** N; 0 where no weight is known. */
export const heaviestBefore = (job: Job, day: string): number =>
  Math.max(
    0,
    ...job.vehicles.flatMap(({ weight, since }) => (weight.known && (!since || since <= day) ? weight.high : [])),
  );

const afterAlarms = (
  anchors: readonly AnchorHistory[],
  cracks: readonly CrackWatch[],
  last: string | undefined,
): RoundReason[] => {
  if (!last) return [];
  const ringing = anchors.filter(({ alarms }) => alarms.length > 0);
  const nearest = Math.min(...anchors.map(daysToLimit));
  const looks = cracks.flatMap((crack) => {
    const date = nextLook(crack);
    return date
      ? [{ id: "crack" as const, date, words: `a month after the last look at ${crack.crack}`, basis: practice }]
      : [];
  });
  return [
    ...(ringing.length > 0
      ? [
          {
            id: "after-alarm" as const,
            date: addDays(last, ALARM),
            words: `a month after an alarm (${ringing.map(({ anchor }) => anchor).join(", ")})`,
            basis: practice,
          },
        ]
      : []),
    ...(nearest < YEARLY
      ? [
          {
            id: "limit-near" as const,
            date: addDays(last, Math.max(SOONEST, Math.floor(nearest))),
            words: "before the fastest pace the readings allow could carry an anchor to the limit",
            basis: "the watch, 95 %",
          },
        ]
      : []),
    ...looks,
  ];
};

const daysToLimit = ({ moved, limit, fastest }: AnchorHistory): number =>
  moved === undefined || !fastest ? Number.POSITIVE_INFINITY : Math.max(0, (limit - moved) / (fastest / 365.25));
