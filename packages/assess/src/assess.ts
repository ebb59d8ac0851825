import type { Point } from "@floorworthy/engine/geometry";
import { capital } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Assessment, MarginAnswer, PageAnswer } from "./assessment.ts";
import { cautionsFor } from "./cautions.ts";
import { type Facts, factsOf } from "./facts/facts.ts";
import { shown } from "./facts/print.ts";
import { surveyOf } from "./facts/survey.ts";
import { layoutOf } from "./layout.ts";
import { type Detail, marginOf, noMargin } from "./margin/margin.ts";
import { missingFacts } from "./missing.ts";
import { type Ruling, rule } from "./outcome.ts";
import { pageOf } from "./page/page-lines.ts";
import { remediesFor } from "./remedies.ts";
import { type Shift, smallestShift } from "./shift.ts";
import { stopsOf } from "./stops/stops.ts";

/** Job in, rulings out. Pure: the same job gives the same answer, to the bit. */
export const assess = (job: Job): Assessment => {
  const first = judge(job, "whole");
  const { facts: missing, settling } = missingFacts(job, first.stops, quickJudge(job, first));
  const ruling = withPlace(job, heldBack(first.ruling, missing));
  return {
    format: 1,
    title: job.title,
    ...ruling,
    stops: first.stops,
    page: first.page,
    margin: first.margin,
    ...(first.stops.length > 0 ? {} : { survey: surveyOf(job) }),
    missing,
    settling,
    remedies:
      first.stops.length > 0
        ? []
        : remediesFor(job, ruling.outcome, (changed) => marginOf(changed, factsOf(changed), "word")),
    layout: layoutOf(job),
    cautions: cautionsFor(job),
  };
};

/** What is known at once, before the margin and the open questions are worked out. */
export interface FirstLook extends Pick<Assessment, "stops" | "page" | "layout"> {}

/** The page's answer and the plan alone: some milliseconds, where the whole takes a second. The same lines as `assess`. */
export const firstLook = (job: Job): FirstLook => {
  const facts = factsOf(job);
  const stops = stopsOf(job);
  return { stops, page: stops.length > 0 ? notJudged(job, facts) : pageOf(job, facts), layout: layoutOf(job) };
};

interface Judged extends Pick<Assessment, "outcome" | "stops" | "page" | "margin"> {
  readonly ruling: Ruling;
}

const judge = (job: Job, detail: Detail, marginFor = marginOf): Judged => {
  const facts = factsOf(job);
  const stops = stopsOf(job);
  const page = stops.length > 0 ? notJudged(job, facts) : pageOf(job, facts);
  const margin =
    stops.length > 0 || (detail === "word" && page.verdict === "fails") ? notComputed : marginFor(job, facts, detail);
  const ruling = rule(job, facts, stops, page, margin);
  return { outcome: ruling.outcome, ruling, stops, page, margin };
};

/** Judges answers to open questions; a margin whose inputs an answer leaves alone is not computed again. */
const quickJudge = (job: Job, first: Judged): ((changed: Job) => Judged) => {
  const known = new Map<string, MarginAnswer>();
  if (first.margin !== notComputed) known.set(marginKey(job, factsOf(job)), first.margin);
  const marginFor: typeof marginOf = (changed, facts, detail) => {
    const key = marginKey(changed, facts);
    const margin = known.get(key) ?? marginOf(changed, facts, detail);
    known.set(key, margin);
    return margin;
  };
  return (changed) => judge(changed, "word", marginFor);
};

/** Of what questions can change, all that the margin reads. */
const marginKey = ({ lift, bay, floor }: Job, facts: Facts): string =>
  JSON.stringify([
    facts.thickness.map(({ thickness, best }) => [thickness, best]),
    facts.strength.map(({ worst, best }) => [worst, best]),
    lift.top,
    bay.outline,
    floor.joints,
    floor.cracks,
    floor.zones,
  ]);

const notComputed: MarginAnswer = noMargin("Not computed: a figure would be false comfort here.");

/** The page is still laid out, so that it is seen what it asks; but under a stop no line is said to be met. */
const notJudged = (job: Job, facts: ReturnType<typeof factsOf>): PageAnswer => ({
  verdict: "not-judged",
  lines: pageOf(job, facts).lines.map((line) =>
    line.result === "meets" ? { ...line, result: "not-shown", why: `Not judged: a stop stands. ${line.why}` } : line,
  ),
});

/** A shift names the place; where there is none it is new concrete, or another bay. */
const withPlace = (job: Job, ruling: Ruling): Ruling => {
  if (ruling.outcome !== "shift") return ruling;
  const shift = smallestShift(job);
  if (shift?.found === "place") {
    const moved = judge({ ...job, position: shift.to }, "word");
    // what no move cures decides
    if (moved.outcome === "lighter-lift" || moved.outcome === "pour" || moved.outcome === "refuse") return moved.ruling;
    if (moved.outcome !== "shift")
      return {
        ...ruling,
        sentence: `${ruling.sentence} ${placeWords(job, shift)}`,
        conditions: [placeWords(job, shift), ...ruling.conditions.slice(1)],
      };
  }
  if (shift?.found !== "nowhere") return ruling;
  return {
    ...ruling,
    outcome: "pour",
    sentence: `${shift.why} Pour pads across the joint, or choose another bay.`,
  };
};

const placeWords = (job: Job, { sentence, to }: Extract<Shift, { found: "place" }>): string => {
  const length = (mm: number): string => shown(Math.abs(mm), "length", job.units);
  const at = ({ x, y }: Point): string => `${length(x)} from the left and ${length(y)} from the back wall`;
  return `${sentence} Left column ${at(to.left)}, right column ${at(to.right)}. More is better where the bay allows it.`;
};

/** Strength is a line of the page; pipes are located on the day of drilling, which is a condition. */
const answeredLater = new Set(["strength", "utilities"]);

/** Nothing is accepted while an open question could still turn it into a refusal. */
const heldBack = (ruling: Ruling, missing: Assessment["missing"]): Ruling => {
  if (ruling.outcome !== "accept" && ruling.outcome !== "accept-if") return ruling;
  const grave = missing.filter(
    (fact) =>
      !answeredLater.has(fact.id) && (fact.worst === "refuse" || (fact.worst === "hold" && fact.best !== "hold")),
  );
  const first = grave[0];
  if (!first) return ruling;
  return {
    outcome: "hold",
    sentence: `Hold: find out ${first.what} first. ${capital(first.how)} (${first.cost}).`,
    reasons: [...grave.map((fact) => `Not known: ${fact.what}. At worst it means ${fact.worst}.`), ...ruling.reasons],
    conditions: ruling.conditions,
  };
};
