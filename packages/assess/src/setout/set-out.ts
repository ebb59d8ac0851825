import { fromBase, isUnable, printNumber, type Term, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Assessment, PlacedBase } from "../assessment.ts";
import { basisWords } from "../facts/known.ts";
import { term } from "../facts/print.ts";
import { shimPlan } from "../shims/shim-plan.ts";
import { crossPattern } from "./cross-pattern.ts";
import { type Drilling, settingGround } from "./ground.ts";
import type { HoleCheck } from "./hole-check.ts";
import { type HoleDetail, holeDetail } from "./hole-detail.ts";
import { columnMarks, datums, holeMarks, type Mark } from "./marks.ts";
import { orderOfWork } from "./order-of-work.ts";
import { practice } from "./practice.ts";
import { recordedFaults } from "./recorded-faults.ts";
import { type SquareCheck, squareChecks } from "./square.ts";

/** Everything to mark, drill, set and torque one lift. */
export interface SetOut {
  readonly format: 1;
  readonly title: string;
  readonly drilling: Drilling;
  /** what comes before the first hole, most important first */
  readonly before: readonly string[];
  /** names of what the tape starts from */
  readonly walls: { readonly x: string; readonly y: string };
  readonly columns: readonly Mark[];
  readonly holes: readonly Mark[];
  readonly spacing: Term | undefined;
  readonly square: readonly SquareCheck[];
  readonly tolerances: readonly Term[];
  readonly hole: HoleDetail;
  readonly torque: TorqueCard;
  readonly order: readonly string[];
}

export interface TorqueCard {
  readonly full: Term | undefined;
  /** rounds of tightening, lowest first */
  readonly rounds: readonly Term[];
  readonly patterns: readonly { readonly side: string; readonly order: readonly string[] }[];
}

/** Set-out of an assessed job, or why there is none. A fault of hole or anchor leaves the marks and takes the drilling away. */
export const setOut = (job: Job, assessment: Assessment): SetOut | Unable => {
  const ground = settingGround(job, assessment);
  if (isUnable(ground)) return ground;
  const { bases } = assessment.layout;
  const hole = holeDetail(job);
  const faults = [...recordedFaults(job), ...faultsOf(job, hole)];
  const drilling: Drilling = faults.length > 0 ? "marks-only" : ground.drilling;
  const walls = datums(job);
  const torque = torqueCard(job, bases);
  const [left, right] = bases;
  return {
    format: 1,
    title: job.title,
    drilling,
    before: [...faults, ...ground.before],
    walls: { x: walls.x.words, y: walls.y.words },
    columns: columnMarks(job, bases),
    holes: holeMarks(job, bases),
    spacing:
      left && right && bases.length === 2
        ? term(
            "S",
            "between the column centres",
            Math.hypot(right.centre.x - left.centre.x, right.centre.y - left.centre.y),
            "length",
            job.units,
            { basis: "plan of the job" },
          )
        : undefined,
    square: squareChecks(job, bases),
    tolerances: tolerancesOf(job),
    hole,
    torque,
    order: orderOfWork(
      job,
      drilling,
      hole,
      torque.rounds.map((t) => `${printNumber(t.value, 0)}`).join(", ") || undefined,
    ),
  };
};

const tolerancesOf = (job: Job): Term[] =>
  (
    [
      ["between the two diagonals", practice.diagonals],
      ["spacing of the columns, more or less", practice.spacing],
      ["a hole off its mark on the template", practice.holes],
    ] as const
  ).map(([words, value]) =>
    term("±", words, value, "length", job.units, { clause: "common practice, no source; the lift's manual first" }),
  );

const faultsOf = (job: Job, hole: HoleDetail): string[] => [
  ...shimPlan(job)
    .bases.filter((base) => base.bedding === "put-the-floor-right")
    .map((base) => `The floor falls too far under the ${base.side} base for shims or grout: have it put right first.`),
  ...hole.checks.filter((c) => c.weight === "limit" && c.ratio > 1 + 1e-9).map((c) => faultWords(job, c, hole)),
  ...(hole.lacking.length > 0 ? [`Nothing is drilled before these are known: ${hole.lacking.join(", ")}.`] : []),
];

const faultWords = (job: Job, { id, title, demand, capacity }: HoleCheck, { shimRoom }: HoleDetail): string => {
  const words = (t: Term): string =>
    job.units === "si" ? `${printNumber(t.value, 0)} mm` : `${printNumber(t.value, 2)} in`;
  const what = `${title}: ${words(demand)} asked, ${words(capacity)} there.`;
  switch (id) {
    case "anchor-length":
      return `The anchor is too short. ${what} ${shimRoom && shimRoom.value > 0 ? `It reaches through ${words(shimRoom)} of shims at most.` : "It reaches through no shim at all."} Get longer anchors of the same sheet; never set one less deep.`;
    case "cover-below":
      return `The hole leaves too little concrete below it: the bottom would break out. ${what}`;
    case "member-thickness":
      return `The concrete is thinner than the anchor's sheet allows. ${what}`;
    default:
      return `${what} Read the anchor's sheet again.`;
  }
};

const torqueCard = (job: Job, bases: readonly PlacedBase[]): TorqueCard => {
  const { torque } = job.lift.anchors;
  const unit = job.units === "si" ? "N·m" : "lb-ft";
  const round = (words: string, share: number): Term[] =>
    torque.known
      ? [
          {
            symbol: "T",
            words,
            value: fromBase(torque.value * share, unit),
            unit,
            basis: basisWords(torque.basis),
            ...(share === 1
              ? {}
              : { clause: "common practice, no source", formula: `${share === 0.5 ? "1/2" : "1/5"} T` }),
          },
        ]
      : [];
  const rounds = [...round("first round, snug", 0.2), ...round("second round", 0.5), ...round("third round, full", 1)];
  return {
    full: rounds.at(-1),
    rounds,
    patterns: bases.map((base) => ({ side: base.side, order: crossPattern(base.anchors) })),
  };
};
