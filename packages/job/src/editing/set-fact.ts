import { type Document, isMap, isScalar, type Node, parseDocument, Scalar, type YAMLMap } from "yaml";
import { yamlOptions } from "../reading/parse-source.ts";
import { parsePath } from "./path.ts";

const RANGE = ["low", "high", "from", "to"];

/** Can stand without quotes in a line or in braces, and reads back as the same text. */
const needsNoQuotes = (value: string): boolean =>
  /^[\p{L}\d][\p{L}\p{N} ./°·²³⁴-]*$/u.test(value) && !value.endsWith(" ");

const quoted = (value: string, like: Scalar): string =>
  like.type !== Scalar.QUOTE_DOUBLE && needsNoQuotes(value) ? value : JSON.stringify(value);

/** The value in place of the old one, every other character of the file untouched. */
const splice = (text: string, node: Scalar, value: string): string | undefined => {
  const plain = node.type === Scalar.PLAIN || node.type === Scalar.QUOTE_DOUBLE || node.type === Scalar.QUOTE_SINGLE;
  if (!node.range || !plain || node.range[0] === node.range[1]) return undefined;
  return text.slice(0, node.range[0]) + quoted(value, node) + text.slice(node.range[1]);
};

const isJson = (text: string): boolean => /^\s*\{\s*"/.test(text);

const written = (document: Document, value: string, json: boolean): Scalar => {
  const node = document.createNode(value) as Scalar;
  if (json || !needsNoQuotes(value)) node.type = Scalar.QUOTE_DOUBLE;
  return node;
};

/** Groups named by the path that are missing, empty or `unknown` are made, so that the value has a place. */
const makeWay = (document: Document, keys: readonly (string | number)[], json: boolean): YAMLMap | undefined => {
  let at = document.contents as Node | null;
  for (const [i, key] of keys.slice(0, -1).entries()) {
    if (isMap(at)) {
      const inside = at.get(key, true) as Node | undefined;
      const empty =
        inside === undefined ||
        inside === null ||
        (isScalar(inside) && (inside.value === null || inside.value === "unknown"));
      if (empty && typeof keys[i + 1] === "number") return undefined;
      if (empty) at.set(json ? quotedKey(document, String(key)) : key, document.createNode({}));
      at = at.get(key, true) as Node;
    } else {
      at = (document.getIn(keys.slice(0, i + 1), true) as Node | undefined) ?? null;
    }
  }
  return isMap(at) ? at : undefined;
};

const quotedKey = (document: Document, key: string): Scalar => {
  const node = document.createNode(key) as Scalar;
  node.type = Scalar.QUOTE_DOUBLE;
  return node;
};

const setInTree = (
  document: Document,
  keys: readonly (string | number)[],
  value: string,
  json: boolean,
): string | undefined => {
  const parent = makeWay(document, keys, json);
  const last = keys.at(-1)!;
  if (!parent || typeof last === "number") {
    if (!document.hasIn(keys)) return undefined;
    document.setIn(keys, written(document, value, json));
  } else {
    parent.set(json && !parent.has(last) ? quotedKey(document, last) : last, written(document, value, json));
  }
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
};

/**
 * Sets one value in a job file's text and leaves the rest, comments too, as it was.
 *
 * A fact written as a group keeps its basis: its `value` is set and the range around the old value taken away.
 * @param path - as in an Issue: `floor.readings[2].thickness`
 * @param value - as a person writes it: `4 1/4 in`, `unknown`
 * @returns the new text; the old one when the file is no YAML or has no such place
 */
export const setFact = (text: string, path: string, value: string): string => {
  const keys = parsePath(path);
  const document = parseDocument(text, yamlOptions) as unknown as Document;
  if (!keys || document.errors.length > 0 || !isMap(document.contents)) return text;
  const json = isJson(text);
  const node = document.getIn(keys, true) as Node | undefined;
  if (isScalar(node)) {
    const spliced = splice(text, node as Scalar, value);
    if (spliced !== undefined) return spliced;
  }
  if (!isMap(node)) return setInTree(document, keys, value, json) ?? text;
  const inner = node.get("value", true);
  const ranged = RANGE.filter((key) => node.has(key));
  const spliced = ranged.length === 0 && isScalar(inner) ? splice(text, inner as Scalar, value) : undefined;
  if (spliced !== undefined) return spliced;
  for (const key of ranged) node.delete(key);
  return setInTree(document, [...keys, "value"], value, json) ?? text;
};
