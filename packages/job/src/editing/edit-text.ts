import { isCollection, isMap, isScalar, type Node, parseDocument, type Scalar } from "yaml";

/** Where a fact stands in a job file, e.g. `["floor", "readings", 0, "thickness"]`. */
export type Path = readonly (string | number)[];

/** One fact written anew, as a person would type it. */
export interface Edit {
  readonly path: Path;
  readonly written: string;
}

/**
 * The job file with some facts written anew. Everything else, comments and spacing included, stays as it was, unless
 * a fact is added that the file did not have. A file that is not YAML is returned untouched: its reader says why.
 */
export const editText = (text: string, edits: readonly Edit[]): string => edits.reduce(editOne, text);

const editOne = (text: string, { path, written }: Edit): string => {
  const document = parseDocument(text);
  if (document.errors.length > 0) return text;
  const scalar = factScalar(document.getIn(path, true));
  if (scalar?.range) return text.slice(0, scalar.range[0]) + quoted(written, text) + text.slice(scalar.range[1]);
  const blocked = path.findIndex((_, i) => i > 0 && !isCollection(document.getIn(path.slice(0, i), true)));
  const at = blocked === -1 ? path.length : blocked;
  document.setIn(path.slice(0, at), document.createNode(nested(path.slice(at), written)));
  return document.toString({ lineWidth: 0 });
};

/** The scalar that holds the fact: itself, or the `value` of a fact with a basis. */
export const factScalar = (node: unknown): Scalar | undefined => {
  if (isScalar(node)) return node;
  const value = isMap(node) ? (node.get("value", true) as Node | undefined) : undefined;
  return isScalar(value) ? value : undefined;
};

const nested = (rest: Path, written: string): unknown =>
  rest.reduceRight<unknown>((inner, key) => (typeof key === "number" ? [inner] : { [key]: inner }), written);

/** Plain where YAML reads it back as the same words in any place, else in double quotes (always in JSON). */
const quoted = (written: string, text: string): string => {
  const plain = /^[\p{L}\d][\p{L}\d ./°²³⁴·%+()-]*$/u.test(written) && !written.endsWith(" ");
  return plain && !text.trimStart().startsWith("{") ? written : JSON.stringify(written);
};
