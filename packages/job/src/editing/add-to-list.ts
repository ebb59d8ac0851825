import { type Document, isMap, isSeq, type Node, parseDocument, type YAMLSeq } from "yaml";
import { yamlOptions } from "../reading/parse-source.ts";
import { parsePath } from "./path.ts";

/** A list entry as plain data: texts as a person writes them, groups and lists of these. */
export type Entry = string | number | readonly Entry[] | { readonly [key: string]: Entry };

/**
 * Adds one entry at the end of a list in a job file's text (`floor.readings`, `visits`) and leaves the rest as it was. A
 * missing list, or the groups around it, are made.
 * @returns the new text; undefined when the file is no YAML or something that is no list stands there
 */
export const addToList = (text: string, path: string, entry: Entry): string | undefined => {
  const keys = parsePath(path);
  const document = parseDocument(text, yamlOptions) as unknown as Document;
  if (!keys || document.errors.length > 0 || !isMap(document.contents)) return undefined;
  const list = listAt(document, keys);
  if (!list) return undefined;
  if (list.items.length === 0) list.flow = false;
  list.add(document.createNode(entry) as Node);
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
};

const listAt = (document: Document, keys: readonly (string | number)[]): YAMLSeq | undefined => {
  for (let depth = 1; depth <= keys.length; depth++) {
    const way = keys.slice(0, depth);
    const node = document.getIn(way, true) as Node | undefined;
    if (depth === keys.length) {
      if (isSeq(node)) return node as YAMLSeq;
      if (!isEmpty(document, way)) return undefined;
      document.setIn(way, document.createNode([]));
      return document.getIn(way, true) as YAMLSeq;
    }
    if (isMap(node) || isSeq(node)) continue;
    if (!isEmpty(document, way) || typeof keys[depth] === "number") return undefined;
    document.setIn(way, document.createNode({}));
  }
  return undefined;
};

/** Nothing, null or the word unknown stands there. */
const isEmpty = (document: Document, way: readonly (string | number)[]): boolean => {
  const value = document.getIn(way);
  return value === undefined || value === null || value === "unknown";
};
