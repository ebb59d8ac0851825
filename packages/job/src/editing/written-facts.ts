import { isMap, isScalar, isSeq, parseDocument } from "yaml";
import { factScalar, type Path } from "./edit-text.ts";

/** A fact as it stands in the file. */
export interface Written {
  readonly path: Path;
  readonly written: string;
}

/** Every single fact of a job file in its order; a fact with a basis counts as one. Empty when the file is not YAML. */
export const writtenFacts = (text: string): readonly Written[] => {
  const document = parseDocument(text);
  return document.errors.length > 0 ? [] : walk(document.contents, []);
};

const walk = (node: unknown, path: Path): readonly Written[] => {
  const scalar = factScalar(node);
  if (scalar) return [{ path, written: scalar.source ?? String(scalar.value) }];
  if (isMap(node))
    return node.items.flatMap(({ key, value }) => walk(value, [...path, String(isScalar(key) ? key.value : key)]));
  if (isSeq(node)) return node.items.flatMap((item, i) => walk(item, [...path, i]));
  return [];
};
