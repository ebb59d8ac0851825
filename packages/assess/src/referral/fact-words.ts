import type { Choice, Quantity } from "@floorworthy/job";
import { basisWords } from "../facts/known.ts";
import type { KnownFact } from "./referral-pack.ts";

/** A number as it was written, with its range, and how it is known. Unknown is said, never left out. */
export const quantityFact = (what: string, fact: Quantity): KnownFact =>
  fact.known
    ? {
        what,
        value: fact.low < fact.value || fact.value < fact.high ? `${fact.written} (a range is given)` : fact.written,
        basis: basisWords(fact.basis),
      }
    : { what, value: "not known", basis: fact.note ?? "" };

/** A choice in plain words. */
export const choiceFact = (
  what: string,
  fact: Choice<string>,
  words: Readonly<Record<string, string>> = {},
): KnownFact =>
  fact.known
    ? { what, value: words[fact.value] ?? fact.value.replaceAll("-", " "), basis: basisWords(fact.basis) }
    : { what, value: "not known", basis: fact.note ?? "" };

export const saidFact = (what: string, value: string | undefined): KnownFact => ({
  what,
  value: value ?? "not known",
  basis: value === undefined ? "" : "stated, not shown",
});
