import { capital, type Dimension, dimensionWords } from "@floorworthy/engine/quantities";
import { report } from "../reading/place.ts";
import type { Field, Sign } from "./field.ts";
import { readWritten } from "./number-text.ts";
import { isUnknownWord } from "./unknown-word.ts";

/** A number with a unit that must be known where it is written; `fallback` stands in when it is left out. */
export const plainNumber = (
  dimension: Dimension,
  doc: string,
  fallback: number,
  sign: Sign = "not-negative",
): Field<number> => ({
  shape: { kind: "quantity", dimension, sign, may: "not-be-unknown" },
  doc,
  need: "optional",
  absent: () => fallback,
  read: (node, place) => {
    if (!isUnknownWord(node)) return readWritten(node, place, dimension, sign)?.value ?? fallback;
    const { name, example } = dimensionWords[dimension];
    report(place, node, "needs-a-value", {
      got: "unknown",
      message: `${capital(name)} is needed here.`,
      hint: `Write a value such as ${example}, or take the item out.`,
    });
    return fallback;
  },
});

/** The same, undefined when left out. */
export const plainNumberOrNone = (dimension: Dimension, doc: string): Field<number | undefined> => {
  const field = plainNumber(dimension, doc, 0);
  return { ...field, absent: () => undefined };
};
