import { isUnable, type Term, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Assessment } from "../assessment.ts";
import { bitMark, bitSize } from "./bit-mark.ts";
import { movingRule } from "./places-to-try.ts";
import { type PlannedHoles, planHoles } from "./plan-holes.ts";
import type { SurveyPlan } from "./survey-plan.ts";
import { drillingCautions, edgeReading, furtherHole, otherFacts, record, stopsOnTheSpot } from "./what-to-record.ts";
import { looksFirst, whyNoDrilling } from "./why-no-drilling.ts";
import { termWords } from "./words.ts";

const none: PlannedHoles = { by: "bases", holes: [], answered: [], dropped: [] };

/**
 * Where to drill for the slab's thickness, how deep, and what to write down. Under a stop no place for a hole is named.
 * Unable when neither the columns' place nor the bay and the lift's spacing are known.
 */
export const planSurvey = (job: Job, assessment: Pick<Assessment, "stops" | "layout">): SurveyPlan | Unable => {
  const instead = whyNoDrilling(job, assessment);
  if (instead.length > 0) return planOf(job, "forbidden", none, instead);
  if (job.floor.state === "to-be-poured") {
    return planOf(job, "nothing-to-drill", none, [
      "Measure the depth of the forms at every corner of every base before the truck comes, and photograph the tape in them.",
    ]);
  }
  const planned = planHoles(job, assessment.layout.bases);
  if (isUnable(planned)) return planned;
  return planOf(job, planned.holes.length > 0 ? "holes" : "no-holes-needed", planned, []);
};

const planOf = (
  job: Job,
  drilling: SurveyPlan["drilling"],
  planned: PlannedHoles,
  instead: readonly string[],
): SurveyPlan => {
  const mark = bitMark(job);
  const first = drilling === "holes" ? looksFirst(job) : [];
  return {
    format: 1,
    title: job.title,
    drilling,
    sentence: sentenceFor(drilling, planned, mark, first.length, instead),
    ...planned,
    rule: movingRule(planned.by, job.units),
    mark,
    bit: bitSize(job),
    instead,
    first,
    record: [...record(job), furtherHole(job.units)],
    stops: stopsOnTheSpot,
    edgeReading: edgeReading(job),
    cautions: drillingCautions,
    others: otherFacts(job),
  };
};

const sentenceFor = (
  drilling: SurveyPlan["drilling"],
  { holes, dropped, by }: PlannedHoles,
  mark: Term | Unable,
  looks: number,
  instead: readonly string[],
): string => {
  switch (drilling) {
    case "forbidden":
      return `No hole is drilled in this floor. ${instead[0] ?? ""}`;
    case "nothing-to-drill":
      return "There is no floor to drill yet: it is still to be poured.";
    case "no-holes-needed":
      return dropped.length > 0
        ? `No hole is planned: ${dropped.length} ${dropped.length === 1 ? "place has" : "places have"} no lawful hole; every other one is answered.`
        : "No hole is needed: every place the survey asks for is answered.";
    case "holes": {
      const count = `${holes.length} ${holes.length === 1 ? "hole" : "holes"}`;
      const where = by === "grid" ? " in a grid, because the lift has no place yet" : "";
      const depth = isUnable(mark)
        ? "the bit's mark is not known: the maker's least thickness is missing"
        : `bit marked at ${termWords(mark)}`;
      return `${count}${where}, ${depth}.${looks > 0 ? " Look first: no hole before every look is done and clear." : ""}`;
    }
  }
};
