import { type Dimension, dimensionWords, readQuantity } from "@floorworthy/engine/quantities";
import { isScalar, type Node } from "yaml";
import { type Place, report } from "../reading/place.ts";
import type { Sign } from "./field.ts";
import { scalarText } from "./scalar-text.ts";

/** "4 to 5 in" and "about 4 in" are facts with a range. */
const hintForRange = (text: string): string | undefined => {
  if (/\d.*(?:\bto\b|\d ?[-–] ?\d|\bor\b|±|\+\/-).*\d/.test(text)) return "Write a range as { low: 4 in, high: 5 in }.";
  return /^(?:~|≈|about|approx|ca\b|circa|>|<|≥|≤|min|max)/i.test(text.trim())
    ? "Write the number alone, or how far it may be off, as { value: 4 in, low: 3 in, high: 5 in }."
    : undefined;
};

/** One written number with its unit, in base units; undefined after reporting what is wrong with it. */
export const readWritten = (
  node: Node,
  place: Place,
  dimension: Dimension,
  sign: Sign,
): { readonly value: number; readonly written: string } | undefined => {
  const { name, example } = dimensionWords[dimension];
  const text = scalarText(node, place, name, `Write a value such as ${example}, or unknown.`);
  if (text === undefined) return undefined;
  const read = readQuantity(
    isScalar(node) && typeof node.value === "number" ? String(node.source ?? node.value) : text,
    dimension,
  );
  if (!read.ok) {
    report(place, node, read.problem, { ...read, hint: hintForRange(text) ?? read.hint });
    return undefined;
  }
  const { value, written } = read;
  if (sign !== "any" && value < 0) {
    report(place, node, "negative", {
      got: written,
      message: `"${written}" is negative.`,
      hint: `Write ${name} ${sign === "positive" ? "above zero" : "of zero or more"}.`,
    });
    return undefined;
  }
  if (sign === "positive" && value === 0) {
    report(place, node, "not-positive", {
      got: written,
      message: `"${written}" is zero.`,
      hint: `Write ${name} above zero, or unknown.`,
    });
    return undefined;
  }
  return { value, written };
};
