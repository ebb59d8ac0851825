import { earlyFrost } from "@floorworthy/engine/concrete";
import type { Job } from "@floorworthy/job";
import { shown } from "../facts/print.ts";
import type { Question } from "./counts.ts";
import type { GainChoice } from "./gain.ts";
import { neededAge } from "./potential.ts";
import type { Told } from "./told.ts";
import { cureDate, dateWords } from "./words.ts";

/** What the temperatures and the mix give to fear, worst first. */
export const warningsFor = (
  job: Job,
  story: Told,
  choice: GainChoice,
  strength28: number,
  poured: string | undefined,
  question: Question | undefined,
): string[] => {
  const frost = story.state === "told" ? earlyFrost(story.low, strength28, choice.gain) : undefined;
  const safe = shown(3.447, "stress", job.units);
  return [
    ...(frost === undefined
      ? []
      : [
          `Frost on ${dateWords({ ...cureDate(frost, poured), day: Math.floor(frost) })}, before ${safe} by the cautious count: concrete frozen so early is damaged for good, and waiting does not mend it. Scratch it, sound it, and core it before anything is drilled (ACI 306R, from memory).`,
        ]),
    ...(question && !Number.isFinite(neededAge(question.ask, question.gain, question.potential))
      ? [
          `The mix ordered never reaches ${shown(question.ask, "stress", job.units)} by the curve: order a stronger one.`,
        ]
      : []),
    ...(question && question.ask > question.potential.strength28
      ? ["The strength asked lies above the 28-day strength counted."]
      : []),
    ...(hottest(story) > 35
      ? [
          "Hot at an early age: concrete that hardens hot gains quickly and ends weaker; no credit is given for the heat above 95 °F (35 °C) without a field-cured cylinder.",
        ]
      : []),
  ];
};

const hottest = ({ state, high }: Told): number =>
  state === "told"
    ? Math.max(...high.filter((_, i) => (i === 0 ? 0 : high[i - 1]!.until) < 28).map((s) => s.temperature))
    : 0;
