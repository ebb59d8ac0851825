import { type Dimension, dimensionOf, fromBase, readQuantity, type Unit } from "@floorworthy/engine/quantities";
import { printed, unitFor } from "./shown.ts";

/** What a typed quantity means, read back in the other system (`4 1/2 in = 114.3 mm`), or what is wrong with it. */
export type Understood = { readonly read: string } | { readonly mistake: string };

/** Nobody knows: a legal answer to everything. */
const openAnswers = ["", "unknown", "?", "not known", "null", "~"];

export const understoodAs = (written: string, dimension: Dimension): Understood => {
  if (openAnswers.includes(written.trim().toLowerCase())) return { read: "" };
  if (/\bto\b/.test(written)) return { read: "" };
  const reading = readQuantity(written, dimension);
  if (!reading.ok) return { mistake: `${reading.message} ${reading.hint}` };
  const other = unitFor(reading.unit, "si") === reading.unit ? "inch-pound" : "si";
  const target = unitFor(reading.unit, other);
  return {
    read: target === reading.unit ? "" : `${written.trim()} = ${printed(fromBase(reading.value, target), target)}`,
  };
};

export const understood = (written: string, unit: Unit): Understood => {
  const sense = understoodAs(written, dimensionOf(unit));
  return "read" in sense && openAnswers.includes(written.trim().toLowerCase()) ? { read: "not known" } : sense;
};
