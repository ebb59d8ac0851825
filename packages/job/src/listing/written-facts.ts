import { isMap, isScalar, isSeq, type Scalar } from "yaml";
import { parseSource } from "../reading/parse-source.ts";
import { printPath } from "../reading/place.ts";

/** A fact as it stands in a job file. */
export interface Written {
  /** as in an Issue, e.g. `floor.readings[2].thickness` */
  readonly path: string;
  readonly written: string;
}

/** Every single fact of a job file in its order; a fact with a basis counts as one. Empty when the file cannot be read. */
export const writtenFacts = (text: string): readonly Written[] =>
  walk(parseSource(text, { issues: [], warnings: [], load: undefined, outline: undefined })?.root, []);

const walk = (node: unknown, path: readonly (string | number)[]): readonly Written[] => {
  const scalar = factScalar(node);
  if (scalar) return [{ path: printPath(path), written: scalar.source ?? String(scalar.value) }];
  if (isMap(node))
    return node.items.flatMap(({ key, value }) => walk(value, [...path, String(isScalar(key) ? key.value : key)]));
  if (isSeq(node)) return node.items.flatMap((item, i) => walk(item, [...path, i]));
  return [];
};

/** The scalar that holds a fact: itself, or the `value` of a fact with a basis and no range. */
const factScalar = (node: unknown): Scalar | undefined => {
  if (isScalar(node)) return node;
  if (!isMap(node) || ["low", "high", "from", "to"].some((key) => node.has(key))) return undefined;
  const value = node.get("value", true);
  return isScalar(value) ? value : undefined;
};
