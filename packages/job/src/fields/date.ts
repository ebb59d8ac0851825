import { report } from "../reading/place.ts";
import type { Field } from "./field.ts";
import { scalarText } from "./scalar-text.ts";

const HINT = "Write year-month-day, such as 2025-03-04.";

/** Does this calendar date exist (Gregorian, 1850 to 2199)? */
export const dateExists = (text: string): boolean => {
  const parts = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (!parts) return false;
  const [year, month, day] = [Number(parts[1]), Number(parts[2]), Number(parts[3])];
  if (year < 1850 || year > 2199 || month < 1 || month > 12) return false;
  const leap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = [31, leap ? 29 : 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31][month - 1]!;
  return day >= 1 && day <= days;
};

/** A calendar date at the site. */
export const date = (doc: string): Field<string | undefined> => ({
  shape: { kind: "date" },
  doc,
  need: "optional",
  absent: () => undefined,
  read: (node, place) => {
    const text = scalarText(node, place, "a date", HINT)?.trim();
    if (text === undefined || text === "unknown") return undefined;
    if (dateExists(text)) return text;
    const formed = /^\d{4}-\d{2}-\d{2}$/.test(text);
    report(place, node, "bad-date", {
      got: text,
      message: formed ? `The date ${text} does not exist.` : `"${text.slice(0, 60)}" is not a date.`,
      hint: HINT,
    });
    return undefined;
  },
});

/** A date the item cannot do without. */
export const dateNeeded = (doc: string): Field<string> => {
  const field = date(doc);
  return { ...field, need: "required", absent: () => "", read: (node, place) => field.read(node, place) ?? "" };
};
