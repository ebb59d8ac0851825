import { type Place, printPath, report } from "../reading/place.ts";
import type { Field } from "./field.ts";
import { scalarText } from "./scalar-text.ts";

const readText =
  (most: number) =>
  (node: Parameters<Field<string>["read"]>[0], place: Place): string | undefined => {
    const text = scalarText(node, place, "a text", "Write the text after the colon, in quotes if it holds a colon.");
    if (text !== undefined && text.length > most)
      report(place, node, "text-too-long", {
        got: text,
        message: `The text has ${text.length} characters; ${most} are kept here.`,
        hint: "Shorten it.",
      });
    return text?.trim();
  };

/** Free text that may be left out. */
export const text = (doc: string, most = 500): Field<string | undefined> => ({
  shape: { kind: "text", most },
  doc,
  need: "optional",
  absent: () => undefined,
  read: readText(most),
});

/** A name. When none is written it is made of its place: the third item of `joints` is "joint 3". */
export const name = (doc: string): Field<string> => ({
  shape: { kind: "text", most: 100 },
  doc,
  need: "optional",
  absent: placeName,
  read: (node, place) => readText(100)(node, place) || placeName(place),
});

const placeName = (place: Place): string => {
  const path = place.path.slice(0, -1);
  const last = path.at(-1);
  if (typeof last !== "number") return last ?? printPath(path);
  return `${singular(String(path.at(-2) ?? "item"))} ${last + 1}`;
};

const singular = (word: string): string => (word.endsWith("s") ? word.slice(0, -1) : word);
