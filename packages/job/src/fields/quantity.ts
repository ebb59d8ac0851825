import { type Dimension, dimensionWords, printQuantity } from "@floorworthy/engine/quantities";
import { isMap, type Node } from "yaml";
import { type Basis, type Quantity, unknown } from "../fact.ts";
import { at, type Place, report, warn } from "../reading/place.ts";
import { basisKeys, readBasis, unknownWith } from "./basis.ts";
import { type Entry, entriesOf, keyRejected } from "./entries.ts";
import type { Field, Sign } from "./field.ts";
import { readWritten } from "./number-text.ts";
import { isUnknownWord } from "./unknown-word.ts";

interface QuantityOptions {
  readonly sign?: Sign;
  /** a warning is given outside these, base units */
  readonly usual?: readonly [number, number];
}

const RANGE = ["value", "low", "high", "from", "to"];

/**
 * A number with a unit that may be unknown: `4 in`, `unknown`, or a group of value, low, high (or from, to) and how it is
 * known. A range without a value counts its middle as the value.
 */
export const quantity = (dimension: Dimension, doc: string, options: QuantityOptions = {}): Field<Quantity> => {
  const sign = options.sign ?? "positive";
  const one = (node: Node, place: Place) => readWritten(node, place, dimension, sign);
  const read = readFact(one, dimensionWords[dimension].example);
  return {
    shape: { kind: "quantity", dimension, sign, may: "be-unknown" },
    doc,
    need: "optional",
    absent: () => unknown,
    read: (node, place) => {
      const fact = read(node, place);
      warnIfUnusual(fact, node, place, dimension, options.usual);
      return fact;
    },
  };
};

type Written = { readonly value: number; readonly written: string };
type Read = (node: Node, place: Place) => Written | undefined;

/** A written value, `unknown`, or a group of value, low, high (or from, to) and how it is known. */
export const readFact =
  (one: Read, example: string) =>
  (node: Node, place: Place): Quantity =>
    isMap(node) ? readGroup(node, place, one, example) : readScalar(node, place, one);

const readGroup = (node: Node, place: Place, one: Read, example: string): Quantity => {
  const entries = entriesOf(node, place, [...RANGE, ...basisKeys], "a fact");
  if (!entries) return unknown;
  const basis = readBasis(entries, place);
  const [value, low, high] = [
    readEnd(entries, ["value"], place, one),
    readEnd(entries, ["low", "from"], place, one),
    readEnd(entries, ["high", "to"], place, one),
  ];
  if (basis.kind === "unknown" || value === "unknown") return unknownWith(basis);
  if (value === "bad" || low === "bad" || high === "bad") return unknown;
  if (!value && !low && !high && keyRejected(node, entries)) return unknown;
  const [from, to] = [low === "unknown" ? undefined : low, high === "unknown" ? undefined : high];
  return ranged(value, from, to, basis, node, place, example);
};

const readScalar = (node: Node, place: Place, one: Read): Quantity => {
  if (isUnknownWord(node)) return unknown;
  const read = one(node, place);
  return read
    ? { known: true, value: read.value, low: read.value, high: read.value, basis: place.basis, written: read.written }
    : unknown;
};

const readEnd = (
  entries: ReadonlyMap<string, Entry>,
  keys: readonly string[],
  place: Place,
  one: Read,
): Written | undefined | "bad" | "unknown" => {
  const key = keys.find((k) => entries.get(k)?.value);
  const node = key === undefined ? undefined : entries.get(key)?.value;
  if (key === undefined || !node) return undefined;
  if (isUnknownWord(node)) return "unknown";
  return one(node, at(place, key)) ?? "bad";
};

const ranged = (
  value: Written | undefined,
  low: Written | undefined,
  high: Written | undefined,
  basis: Basis,
  node: Node,
  place: Place,
  example: string,
): Quantity => {
  const complain = (code: Parameters<typeof report>[2], message: string, hint: string): Quantity => {
    report(place, node, code, { message, hint });
    return unknown;
  };
  const bad = low && high && low.value > high.value;
  if (bad)
    return complain(
      "low-above-high",
      `The low end ${low.written} lies above the high end ${high.written}.`,
      "Swap them or correct one.",
    );
  if (value) {
    const [from, to] = [low ?? value, high ?? value];
    if (value.value < from.value || value.value > to.value)
      return complain(
        "outside-range",
        `The value ${value.written} does not lie between ${from.written} and ${to.written}.`,
        "Correct the value or its range.",
      );
    return { known: true, value: value.value, low: from.value, high: to.value, basis, written: value.written };
  }
  if (low && high) {
    const written = `${low.written} to ${high.written}`;
    return { known: true, value: (low.value + high.value) / 2, low: low.value, high: high.value, basis, written };
  }
  const end = low ?? high;
  if (end)
    return complain(
      "half-a-range",
      `Only one end of the range is written: ${end.written}.`,
      "Write both low and high, or a value.",
    );
  return complain("no-value", "The fact has no value.", `Write value: ${example}, or basis: unknown.`);
};

const warnIfUnusual = (
  fact: Quantity,
  node: Node,
  place: Place,
  dimension: Dimension,
  usual: readonly [number, number] | undefined,
): void => {
  if (!usual || !fact.known || (fact.value >= usual[0] && fact.value <= usual[1])) return;
  const [low, high] = usual.map((end) => printQuantity(end, dimension, { system: "inch-pound" }));
  warn(place, node, "unusual", {
    got: fact.written,
    message: `"${fact.written}" is unusual here; such values lie between ${low} and ${high}.`,
    hint: "Check the number and its unit.",
  });
};
