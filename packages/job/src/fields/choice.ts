import { isMap, type Node } from "yaml";
import { type Choice, unknown } from "../fact.ts";
import { didYouMean } from "../issues/did-you-mean.ts";
import { at, type Place, report } from "../reading/place.ts";
import { basisKeys, readBasis, unknownWith } from "./basis.ts";
import { entriesOf, keyRejected } from "./entries.ts";
import type { Field, Words } from "./field.ts";
import { scalarText } from "./scalar-text.ts";
import { isUnknownWord } from "./unknown-word.ts";

type WordsFor<T extends string> = Readonly<Record<T, string>>;

const readWord = <T extends string>(node: Node, place: Place, words: WordsFor<T>): T | undefined => {
  const list = Object.keys(words);
  const oneOf = `Write one of: ${list.join(", ")}.`;
  const text = scalarText(node, place, "one word", oneOf)?.trim();
  if (text === undefined) return undefined;
  if (Object.hasOwn(words, text)) return text as T;
  const meant = didYouMean(text, list);
  report(place, node, "wrong-word", {
    got: text,
    message: `"${text.slice(0, 60)}" is not a word of the list.`,
    hint: meant ? `Did you mean ${meant}? ${oneOf}` : oneOf,
  });
  return undefined;
};

/** A word out of a list that may be unknown, plain or in a group with how it is known. */
export const choice = <T extends string>(words: WordsFor<T>, doc: string): Field<Choice<T>> => ({
  shape: { kind: "choice", words: words as Words, may: "be-unknown" },
  doc,
  need: "optional",
  absent: () => unknown,
  read: (node, place) => {
    if (isUnknownWord(node)) return unknown;
    if (!isMap(node)) {
      const value = readWord(node, place, words);
      return value === undefined ? unknown : { known: true, value, basis: place.basis };
    }
    const entries = entriesOf(node, place, ["value", ...basisKeys], "a fact");
    if (!entries) return unknown;
    const basis = readBasis(entries, place);
    if (basis.kind === "unknown") return unknownWith(basis);
    const written = entries.get("value")?.value;
    if (!written && keyRejected(node, entries)) return unknown;
    if (!written) {
      report(place, node, "no-value", {
        message: "The fact has no value.",
        hint: `Write value: with one of ${Object.keys(words).join(", ")}, or basis: unknown.`,
      });
      return unknown;
    }
    if (isUnknownWord(written)) return unknownWith(basis);
    const value = readWord(written, at(place, "value"), words);
    return value === undefined ? unknown : { known: true, value, basis };
  },
});

/** A word out of a list that must be known; `fallback` when it is left out. */
export const word = <T extends string, F extends T | undefined>(
  words: WordsFor<T>,
  doc: string,
  fallback: F,
): Field<T | F> => ({
  shape: { kind: "choice", words: words as Words, may: "not-be-unknown" },
  doc,
  need: "optional",
  absent: () => fallback,
  read: (node, place) => readWord(node, place, words) ?? fallback,
});
