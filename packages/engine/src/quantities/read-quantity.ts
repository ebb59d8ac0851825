import { dimensionWords } from "./dimension-words.ts";
import { preferredUnit } from "./preferred-units.ts";
import { readFeetInches } from "./read-feet-inches.ts";
import { plainSigns, readNumber } from "./read-number.ts";
import { readSlope } from "./read-slope.ts";
import { unitOf } from "./unit-spellings.ts";
import { type Dimension, dimensionOf, toBase, type Unit } from "./units.ts";

export type QuantityProblem =
  | "not-a-quantity"
  | "bare-number"
  | "unknown-unit"
  | "wrong-dimension"
  | "ambiguous-number"
  | "number-too-large";

export type QuantityReading =
  | { readonly ok: true; readonly value: number; readonly unit: Unit; readonly written: string }
  | {
      readonly ok: false;
      readonly got: string;
      readonly problem: QuantityProblem;
      /** what is wrong, one sentence */
      readonly message: string;
      /** what to write instead, one sentence */
      readonly hint: string;
    };

const LONGEST = 60;

/**
 * Reads a quantity in trade notation: 4 1/2 in · 5'-6 1/2" · 9,000 lb · 3 ksi · 120 lb-ft · 70 °F · 1/8 in per ft.
 *
 * A number without a unit is refused unless the dimension is "number" or the number is zero of a scale that starts at
 * zero. Signs are read; whether a negative value makes sense is the caller's to say.
 * @returns value in base units (N, mm, MPa, rad, °C, d) and the unit it was written in; or one message and one hint
 */
export const readQuantity = (text: string, dimension: Dimension): QuantityReading => {
  const written = text.trim();
  const got = written.length > LONGEST ? `${written.slice(0, LONGEST)}…` : written;
  const words = dimensionWords[dimension];
  const such = `Write a number${dimension === "number" ? "" : " and a unit"}, such as ${words.example}.`;
  const no = (problem: QuantityProblem, message: string, hint = such): QuantityReading => ({
    ok: false,
    got,
    problem,
    message,
    hint,
  });
  const yes = (value: number, unit: Unit): QuantityReading =>
    Number.isFinite(value)
      ? { ok: true, value: value === 0 ? 0 : value, unit, written }
      : no("number-too-large", `"${got}" is larger than any number this program can hold.`);
  const wrong = (name: string, hint?: string) =>
    no("wrong-dimension", `"${got}" is ${name}; ${words.name} was expected.`, hint);
  const nonsense = () => no("not-a-quantity", `"${got}" is not ${words.name}.`);

  if (written.length === 0 || written.length > LONGEST) return nonsense();
  const plain = plainSigns(written);
  const sign = plain.startsWith("-") ? -1 : 1;
  const body = plain.replace(/^[+-] ?/, "");

  const feet = readFeetInches(body);
  if (feet.kind === "inches-over-11")
    return no(
      "not-a-quantity",
      `"${got}" has 12 inches or more after the feet.`,
      "Carry them into the feet: 5 ft 14 in is 6 ft 2 in.",
    );
  if (feet.kind === "value") return dimension === "length" ? yes(sign * feet.value, "ft") : wrong("a length");

  if (dimension === "number") {
    const slope = readSlope(body);
    if (slope !== undefined) return yes(sign * slope, "");
  }

  const number = readNumber(body);
  if (!number.ok) {
    if (number.problem === "ambiguous-number")
      return no(
        "ambiguous-number",
        `"${got}" can be read in two ways.`,
        "Write a point before decimals and a comma only between thousands, such as 1.5 or 1,234.5.",
      );
    if (number.problem === "bad-fraction")
      return no(
        "not-a-quantity",
        `"${got}" has a fraction that is not below one.`,
        "Write whole inches first, such as 4 1/2 in.",
      );
    return nonsense();
  }

  const unitText = number.rest.replace(/^-(?=[a-z])/i, "").trim();
  if (unitText === "") {
    if (dimension === "number") return yes(sign * number.value, "");
    if (number.value === 0 && dimension !== "temperature") return yes(0, preferredUnit(dimension, "inch-pound"));
    return no("bare-number", `"${got}" has no unit; ${words.name} was expected.`, such);
  }
  if (/^(?:short |us )?tons?$/i.test(unitText))
    return no(
      "unknown-unit",
      `"${got}" can be short tons or tonnes.`,
      "Write pounds (lb), kilograms (kg) or tonnes (t).",
    );
  const unit = unitOf(unitText);
  if (unit === undefined)
    return /[\d]/.test(unitText.replace(/[a-z/][234]\b/gi, "")) || /[^\p{L}\d/·.°%#"'^*² -]/u.test(unitText)
      ? nonsense()
      : no("unknown-unit", `"${got}": the unit "${unitText}" is not known; ${words.name} was expected.`, such);
  if (dimensionOf(unit) === dimension) return yes(toBase(sign * number.value, unit), unit);
  if (dimension === "stress" && dimensionOf(unit) === "force")
    return wrong("a weight", `Concrete spoken of by the pound is meant per square inch: write ${number.value} psi.`);
  return wrong(dimensionWords[dimensionOf(unit)].name);
};
