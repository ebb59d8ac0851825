import { type Question, strengthSpan } from "./counts.ts";
import type { Told } from "./told.ts";
import { type CureDate, cureDate } from "./words.ts";

/** `shown`: by a field-cured cylinder; `never`: at these temperatures the cautious count never gets there. */
export interface StrengthDates {
  readonly state: "shown" | "expected" | "never" | "not-known" | "not-asked";
  readonly from: CureDate | undefined;
  /** the latest over all ways of counting and the range of the temperatures: the one to plan by */
  readonly cautious: CureDate | undefined;
}

/** When the strength asked is there. */
export const strengthDates = (
  story: Told,
  question: Question | undefined,
  poured: string | undefined,
): StrengthDates => {
  if (!question) return { state: "not-asked", from: undefined, cautious: undefined };
  const { field } = question.potential;
  if (field && field.strength >= question.ask) {
    const day = cureDate(field.age, poured);
    return { state: "shown", from: day, cautious: day };
  }
  if (story.state === "not-told") return { state: "not-known", from: undefined, cautious: undefined };
  const { from, cautious } = strengthSpan(story, question);
  const latest = cureDate(cautious, poured);
  return {
    state: Number.isFinite(latest.day) ? "expected" : "never",
    from: cureDate(from, poured),
    cautious: latest,
  };
};
