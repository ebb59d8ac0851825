import type { Term } from "@floorworthy/engine/quantities";
import { number } from "./text.ts";

export const shownTerm = ({ value, unit }: Term): string => `${number(value)}${unit ? ` ${unit}` : ""}`;

/** A term with its formula, clause and basis, and below it what it was made of. */
export const unfold = (term: Term, depth: number): string[] => {
  const pad = "  ".repeat(depth);
  const formula = [term.formula && `= ${term.formula}`, term.worked && `= ${term.worked}`].filter(Boolean).join(" ");
  const born = [term.clause, term.basis].filter(Boolean).join("; ");
  return [
    `${pad}${term.symbol}  ${term.words}: ${shownTerm(term)}`,
    ...(formula ? [`${pad}    ${formula}`] : []),
    ...(born ? [`${pad}    [${born}]`] : []),
    ...(term.from ?? []).flatMap((t) => unfold(t, depth + 1)),
  ];
};
