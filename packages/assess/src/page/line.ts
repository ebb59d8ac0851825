import type { Job, Quantity } from "@floorworthy/job";
import type { PageLine } from "../assessment.ts";
import type { Facts } from "../facts/facts.ts";
import { basisWords } from "../facts/known.ts";

/** One line of the page judged against the facts. */
export type Line = (job: Job, facts: Facts) => PageLine;

export const notAsked = (id: string, title: string): PageLine => ({
  id,
  title,
  result: "not-asked",
  asked: "the page does not say",
  found: "",
  why: "The maker's page has no such line, or nobody has read it yet.",
});

/** A line that no page prints and every page takes for granted: there is nothing to say about it here. */
export const nothingToSay = (id: string, title: string): PageLine => ({
  ...notAsked(id, title),
  asked: "common practice",
  why: "Nothing of the kind on this floor.",
});

/** How the maker's figure is known. */
export const asks = (fact: Quantity): string => (fact.known ? basisWords(fact.basis) : "unknown");
