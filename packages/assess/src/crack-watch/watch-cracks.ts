import { distance, nearestOnSegment } from "@floorworthy/engine/geometry";
import { fromBase, preferredUnit, printQuantity, shown, type Term } from "@floorworthy/engine/quantities";
import type { Crack, Job } from "@floorworthy/job";
import { addDays, daysBetween } from "../facts/calendar.ts";
import { placedBases } from "../layout.ts";
import { type CrackGrowth, type CrackVerdict, fitGrowth, lookError, verdictOf } from "./crack-growth.ts";

/** quiet: stays an edge, nothing more; look: come back soon, with the same card; out-of-service: nothing is lifted. */
export type CrackAnswer = "quiet" | "look" | "out-of-service";

/** One crack over the years. Lengths mm. */
export interface CrackWatch {
  readonly crack: string;
  readonly answer: CrackAnswer;
  readonly sentence: string;
  readonly alarms: readonly string[];
  readonly width: CrackVerdict;
  readonly length: CrackVerdict;
  readonly looks: readonly {
    readonly on: string;
    readonly width: number | undefined;
    readonly length: number | undefined;
  }[];
  /** anchors whose cone the crack may cut, nearest first; distance over hef where hef is known */
  readonly near: readonly { readonly anchor: string; readonly distance: number; readonly inHef: number | undefined }[];
  readonly terms: readonly Term[];
}

/** Growth that counts, mm a year; width from which a crack is an edge and asks why: 1/16 in. Common practice, no source. */
const LEAST = { width: 0.1, length: 25 } as const;
const WIDE = 25.4 / 16;
/** an edge nearer than this many hef cuts the cone: ACI 318-19 17.6.2.1 */
const CONE = 1.5;
const NEAR = 3;

export const watchCracks = (job: Job): CrackWatch[] => job.floor.cracks.map((crack) => watchOf(job, crack));

const watchOf = (job: Job, crack: Crack): CrackWatch => {
  const looks = looksOf(job, crack);
  const sizes = (key: "width" | "length") =>
    looks.flatMap((look) => {
      const size = look[key];
      return size === undefined ? [] : [{ day: daysBetween(looks[0]!.on, look.on), size }];
    });
  const [width, length] = [fitGrowth(sizes("width"), lookError.width), fitGrowth(sizes("length"), lookError.length)];
  const verdict = (key: "width" | "length", growth: CrackGrowth | undefined): CrackVerdict =>
    sizes(key).length === 0 ? "not-looked" : verdictOf(growth, LEAST[key]);
  const common = {
    crack: crack.name || "a crack",
    looks,
    width: verdict("width", width),
    length: verdict("length", length),
    near: nearOf(job, crack),
  };
  const alarms = alarmsOf(job, crack, common, width);
  const first = alarms[0];
  return {
    ...common,
    answer: first?.answer ?? "quiet",
    sentence: first?.words ?? quietWords(common),
    alarms: alarms.map(({ words }) => words),
    terms: termsOf(job, common.crack, width, length),
  };
};

type Seen = Pick<CrackWatch, "crack" | "looks" | "width" | "length" | "near">;

/** The looks written one by one, and the width written for the crack itself as a look of the job's day. */
const looksOf = (job: Job, { seen, width }: Crack): CrackWatch["looks"] => {
  const looks = seen.map((look) => ({
    on: look.on,
    width: look.width.known ? look.width.value : undefined,
    length: look.length.known ? look.length.value : undefined,
  }));
  const last = looks.at(-1)?.on ?? "";
  return width.known && job.date !== undefined && job.date > last
    ? [...looks, { on: job.date, width: width.value, length: undefined }]
    : looks;
};

const nearOf = (job: Job, { line }: Crack): CrackWatch["near"] => {
  const hef = job.lift.anchors.product.effectiveEmbedment;
  return placedBases(job)
    .flatMap((base) => base.anchors)
    .map(({ id, at }) => {
      const away = Math.min(...line.slice(1).map((b, i) => distance(at, nearestOnSegment(at, { a: line[i]!, b }))));
      return { anchor: id, distance: away, inHef: hef.known ? away / hef.value : undefined };
    })
    .filter(({ inHef, distance: away }) => (inHef === undefined ? away < 250 : inHef < NEAR))
    .toSorted((a, b) => a.distance - b.distance);
};

interface Alarm {
  readonly answer: CrackAnswer;
  readonly words: string;
}

const alarmsOf = (job: Job, crack: Crack, seen: Seen, growth: CrackGrowth | undefined): Alarm[] => {
  const grows = seen.width === "growing" || seen.length === "growing";
  const cut = seen.near.filter(({ inHef }) => inHef === undefined || inHef < CONE);
  const where = cut.length > 0 ? ` through the concrete that holds ${names(cut.map(({ anchor }) => anchor))}` : "";
  const pace = seen.width === "growing" && growth ? paceWords(job, growth) : "it gets longer";
  const step = crack.step.known && crack.step.value > 0;
  const last =
    seen.looks.findLast(({ width }) => width !== undefined)?.width ?? (crack.width.known ? crack.width.value : 0);
  const alarms: (Alarm | false)[] = [
    grows &&
      cut.length > 0 && {
        answer: "out-of-service",
        words: `${seen.crack} grows${where}: ${pace}.`,
      },
    grows &&
      cut.length === 0 && {
        answer: "look",
        words: `${seen.crack} grows: ${pace}. Find out why before it reaches an anchor.`,
      },
    step && {
      answer: grows ? "out-of-service" : "look",
      words: `${seen.crack} has a step of ${print(job, crack.step.known ? crack.step.value : 0)}: the slab has moved, and a licensed engineer should look.`,
    },
    last > WIDE && {
      answer: "look",
      words: `${seen.crack} is wider than ${print(job, WIDE)}: it counts as a free edge, and somebody should find out why.`,
    },
    (seen.width === "undecided" || seen.width === "one-look") &&
      cut.length > 0 && {
        answer: "look",
        words: `${seen.crack} runs${where}; ${seen.width === "one-look" ? "one look tells no growth" : "the looks cannot tell whether it grows"}. Look again at the same place, with the same card, in the same season.`,
      },
  ];
  return alarms
    .filter((alarm) => alarm !== false)
    .toSorted((a, b) => Number(b.answer === "out-of-service") - Number(a.answer === "out-of-service"));
};

const names = (ids: readonly string[]): string =>
  ids.length < 2 ? ids.join("") : `${ids.slice(0, -1).join(", ")} and ${ids.at(-1)}`;

const print = (job: Job, mm: number): string =>
  printQuantity(mm, "length", { system: job.units, precision: job.units === "si" ? 2 : 3 });

const YEAR = 365.25;

const paceWords = (job: Job, { rate, deviation }: CrackGrowth): string =>
  `${print(job, rate * YEAR)} of width in a year, give or take ${print(job, deviation * YEAR)}`;

const quietWords = ({ crack, width, near }: Seen): string => {
  const edge = near.length > 0 ? `; it counts as an edge for ${names(near.map(({ anchor }) => anchor))}` : "";
  const words = {
    still: "does not grow",
    closing: "has closed a little, as cracks do with the seasons",
    growing: "grows",
    undecided: "is not looked at often enough to tell whether it grows",
    "one-look": "has been looked at once",
    "not-looked": "has never been measured",
  };
  return `${crack} ${words[width]}${edge}.`;
};

const termsOf = (job: Job, name: string, width?: CrackGrowth, length?: CrackGrowth): Term[] => {
  const unit = preferredUnit("length", job.units);
  const term = (symbol: string, what: string, growth: CrackGrowth | undefined, error: number): Term[] =>
    growth
      ? [
          {
            symbol,
            words: `growth of the ${what} of ${name} in a year`,
            value: fromBase(growth.rate * YEAR, unit),
            unit,
            formula: "least-squares slope of the looks, ± σ/√Σ(t − t̄)²",
            worked: `± ${shown(fromBase(growth.deviation * YEAR, unit))} ${unit}`,
            basis: `measured; one look errs by ${print(job, error)} (common practice, no source)`,
          },
        ]
      : [];
  return [...term("ẇ", "width", width, lookError.width), ...term("l̇", "length", length, lookError.length)];
};

/** The day to look again: a month after an alarm, else with the yearly round. */
export const nextLook = ({ answer, looks }: CrackWatch): string | undefined => {
  const last = looks.at(-1)?.on;
  return last && answer === "look" ? addDays(last, 30) : undefined;
};
