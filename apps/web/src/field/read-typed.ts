import { dimensionOf, fromBase, readQuantity, type Unit } from "@floorworthy/engine/quantities";
import { printed, unitFor } from "../quantities/shown.ts";
import type { Question } from "./question.ts";

type QuantityQuestion = Extract<Question, { kind: "quantity" }>;

/** What was understood of an answer. */
export type Typed =
  /** nobody knows, or nobody looked */
  | { readonly state: "open" }
  /** `written`: as it goes into the file; `says`: read back in the other system */
  | { readonly state: "read"; readonly written: string; readonly says: string }
  | { readonly state: "mistake"; readonly words: string };

const open: readonly string[] = ["", "unknown", "?", "not known", "-"];
const signed: readonly string[] = ["length", "temperature"];

/** A keypad may offer a comma only: with one or two figures after it, it can be nothing but a decimal comma. */
const pointed = (text: string): string => text.replace(/^([+-]?\d+),(\d{1,2})(?!\d)/, "$1.$2");

/** A wrench reads lb-ft or N·m, not the units of the calculation. */
const wrench: Partial<Record<Unit, Unit>> = { "lb-ft": "N·m", N·m: "lb-ft" };

const otherUnit = (unit: Unit): Unit =>
  wrench[unit] ?? unitFor(unit, unitFor(unit, "si") === unit ? "inch-pound" : "si");

/** Reads a typed quantity; a bare number is of the question's unit, which stands beside the field. */
export const readTyped = (typed: string, { dimension, unit, usual }: QuantityQuestion): Typed => {
  const text = pointed(typed.trim());
  if (open.includes(text.toLowerCase())) return { state: "open" };
  const alone = readQuantity(text, dimension);
  const bare = (!alone.ok && alone.problem === "bare-number") || /^[+-]?0+(\.0*)?$/.test(text);
  const written = bare ? `${text} ${unit}` : text;
  const reading = bare ? readQuantity(written, dimension) : alone;
  if (!reading.ok) return { state: "mistake", words: `${reading.message} ${reading.hint}` };
  if (reading.value < 0 && !(signed.includes(dimension) && dimension === "temperature"))
    return { state: "mistake", words: `${written} is less than nothing. Write it without the minus.` };
  const other = otherUnit(reading.unit);
  const same = other === reading.unit || dimensionOf(other) !== dimension;
  const says = same ? written : `${written} = ${printed(fromBase(reading.value, other), other)}`;
  const odd = usual && (reading.value < usual[0] || reading.value > usual[1]);
  return { state: "read", written, says: odd ? `${says}: unusual. Is it right? It is kept as it stands.` : says };
};

/** Reads any answer. */
export const readAnswer = (typed: string, question: Question): Typed => {
  if (question.kind === "quantity") return readTyped(typed, question);
  const text = typed.trim();
  if (text === "") return { state: "open" };
  if (question.kind === "choice") return { state: "read", written: text, says: "" };
  return text.length > 400
    ? { state: "mistake", words: `${text.length} characters; 400 are kept here. Shorten it.` }
    : { state: "read", written: text, says: "" };
};
