import type { Job } from "@floorworthy/job";
import { shown } from "../facts/print.ts";
import type { StrengthDates } from "./strength-dates.ts";
import { type CureDate, dateWords } from "./words.ts";

/** The day for drilling and what it rests on. */
export interface Drilling {
  /** the later of the maker's days and the cautious strength day; undefined where neither is known */
  readonly earliest: CureDate | undefined;
  readonly governs: "maker" | "strength" | "neither-known";
  /** the day with a field-cured cylinder that shows the strength: the maker's */
  readonly withCylinder: CureDate | undefined;
  readonly sentence: string;
}

const between = (from: CureDate, to: CureDate): string =>
  from.day === to.day ? `on ${dateWords(to)}` : `between ${dateWords(from)} and ${dateWords(to)}`;

/** Names the day: the maker's days and the cautious strength date, whichever is later. */
export const drillingOf = (
  job: Job,
  maker: CureDate | undefined,
  { state, from, cautious }: StrengthDates,
  ask: number | undefined,
): Drilling => {
  const asked = ask === undefined ? "" : shown(ask, "stress", job.units);
  const days = maker ? `the maker's ${maker.day} days` : "";
  const later = !maker || (cautious && cautious.day > maker.day) ? "strength" : "maker";
  const field = `a cylinder cured beside the slab shows ${asked}`;
  const sooner = maker
    ? `Sooner, but not before ${dateWords(maker)}, ${days}, only if ${field}.`
    : `Sooner only if ${field}.`;
  switch (state) {
    case "not-asked":
      return maker
        ? {
            earliest: maker,
            governs: "maker",
            withCylinder: maker,
            sentence: `Drill not before ${dateWords(maker)}: ${days}. The maker's page asks no strength.`,
          }
        : {
            earliest: undefined,
            governs: "neither-known",
            withCylinder: undefined,
            sentence:
              "No day for drilling can be named: neither the days nor the strength the maker asks are known. Read the floor page of the lift's manual.",
          };
    case "not-known":
      return {
        earliest: maker,
        governs: maker ? "maker" : "neither-known",
        withCylinder: maker,
        sentence: maker
          ? `Drill not before ${dateWords(maker)}, ${days}, and not before ${asked} is shown: nobody has told the temperatures, so no day for the strength is named.`
          : `No day for drilling can be named: nobody has told the temperatures, and the maker's days are not known. Drill only when ${field}.`,
      };
    case "never":
      return {
        earliest: cautious,
        governs: "strength",
        withCylinder: maker,
        sentence: `Do not drill on a date: at these temperatures the cautious count never reaches ${asked}. Keep it warm, or wait until ${field}${maker ? `, and not before ${dateWords(maker)}, ${days}` : ""}.`,
      };
    case "shown":
      return {
        earliest: maker && cautious && cautious.day > maker.day ? cautious : (maker ?? cautious),
        governs: later,
        withCylinder: maker ?? cautious,
        sentence:
          later === "maker"
            ? `Drill not before ${dateWords(maker!)}: ${days} govern; a field-cured cylinder showed ${asked} or more on ${dateWords(cautious!)}.`
            : `Drill not before ${dateWords(cautious!)}: from then on a field-cured cylinder shows ${asked} or more${maker ? `; ${days} ended on ${dateWords(maker)}` : ". The maker's days are not known: read the page"}.`,
      };
    case "expected":
      return {
        earliest: later === "maker" ? maker : cautious,
        governs: later,
        withCylinder: maker,
        sentence:
          later === "maker"
            ? `Drill not before ${dateWords(maker!)}: ${days} govern; ${asked} is expected ${between(from!, cautious!)}. A field-cured cylinder confirms it.`
            : `Drill not before ${dateWords(cautious!)}: the strength governs; ${asked} is expected ${between(from!, cautious!)}. ${sooner}`,
      };
  }
};
