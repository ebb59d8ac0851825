import { type Kept, type SurveyPlan, tapeWords, termWords } from "@floorworthy/assess/survey";
import { isUnable, type UnitSystem } from "@floorworthy/engine/quantities";
import { section, table, wrap } from "./text.ts";
import { unfold } from "./unfold.ts";

/** The answer first, then the holes; under a stop no place at all. */
export const surveyLines = (plan: SurveyPlan, units: UnitSystem, fold: "folded" | "unfolded"): string[] => [
  plan.title,
  "",
  ...wrap(plan.sentence),
  ...section("Instead of drilling", plan.instead),
  ...section(
    "Look first; with one of these open there is no hole",
    plan.first.map(({ what, how }) => `${what}: ${how}.`),
  ),
  ...(plan.drilling === "holes" ? holes(plan, units) : []),
  ...section(
    "Answered already",
    plan.answered.map(({ where, by }) => `${where}: ${by}.`),
  ),
  ...section(
    "Left out",
    plan.dropped.map(({ where, why }) => `${where}: ${why}.`),
  ),
  ...(plan.drilling === "holes" ? drilling(plan) : []),
  ...section(
    "Bring home from the same visit",
    plan.others.map(({ what, how }) => `${what}: ${how}.`),
  ),
  ...(fold === "unfolded" ? workings(plan) : []),
];

const holes = ({ holes: planned, rule }: SurveyPlan, units: UnitSystem): string[] => [
  "",
  ...table([
    ["hole", "where", "from left wall", "from back wall", "tightest distance kept"],
    ...planned.map(({ number, where, at, keeps }) => [
      String(number),
      where,
      tapeWords(at.x, units),
      tapeWords(at.y, units),
      keeps[0] ? keptWords(keeps[0]) : "",
    ]),
  ]),
  ...section(
    "Moved",
    planned.flatMap(({ number, moved }) => (moved ? [`hole ${number}: ${moved}.`] : [])),
  ),
  ...section("How a hole is placed", [rule]),
];

const keptWords = ({ what, asked, found }: Kept): string =>
  `${termWords(found)} from ${what}, asked ${termWords(asked)}`;

const drilling = ({ mark, bit, record, stops, edgeReading, cautions }: SurveyPlan): string[] => [
  ...section("Bit", [
    isUnable(mark)
      ? mark.reason
      : `${termWords(bit)} bit, tape ${termWords(mark)} from its tip. Flush and still in concrete is an answer: at least that thick.`,
  ]),
  ...section("Stop at once", stops),
  ...section("Write down for each hole", record),
  ...section("Why a reading at the edge lies", [edgeReading]),
  "",
  ...cautions.flatMap((caution) => wrap(caution, "! ")),
];

const workings = ({ mark, holes: planned }: SurveyPlan): string[] => [
  "",
  "WORKINGS",
  ...(isUnable(mark) ? [] : unfold(mark, 1)),
  ...planned.flatMap(({ number, reason, keeps }) => [
    "",
    `  hole ${number}: ${reason}`,
    ...keeps.map(
      ({ what, asked, found }) => `    ${what}: ${termWords(found)}, asked ${termWords(asked)} [${asked.basis ?? ""}]`,
    ),
  ]),
];
