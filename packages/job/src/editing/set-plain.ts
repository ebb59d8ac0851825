import { type Document, isMap, isSeq, type Node, parseDocument } from "yaml";
import { yamlOptions } from "../reading/parse-source.ts";
import type { Entry } from "./add-to-list.ts";
import { parsePath } from "./path.ts";

const opened = (text: string, path: string) => {
  const keys = parsePath(path);
  const document = parseDocument(text, yamlOptions) as unknown as Document;
  return keys && document.errors.length === 0 && isMap(document.contents) ? { keys, document } : undefined;
};

const printed = (document: Document): string => document.toString({ lineWidth: 0, flowCollectionPadding: true });

/** Groups on the way that are missing, or only say unknown, are made. */
const wayTo = (document: Document, keys: readonly (string | number)[]): "there" | "blocked" => {
  for (let depth = 1; depth < keys.length; depth++) {
    const way = keys.slice(0, depth);
    const node = document.getIn(way, true) as Node | undefined;
    if (isMap(node) || isSeq(node)) continue;
    const value = document.getIn(way);
    if ((value !== undefined && value !== null && value !== "unknown") || typeof keys[depth] === "number")
      return "blocked";
    document.setIn(way, document.createNode({}));
  }
  return "there";
};

/**
 * Puts plain data (a place, an outline, a whole group) at a path of a job file's text and leaves the rest as it was.
 * Undefined takes the path away: a list closes up behind an entry.
 * @returns the new text; the old one when the file is no YAML or has no room there
 */
export const setPlain = (text: string, path: string, value: Entry | undefined): string => {
  const { keys, document } = opened(text, path) ?? {};
  if (!keys || !document) return text;
  if (value === undefined) return document.deleteIn(keys) ? printed(document) : text;
  if (wayTo(document, keys) === "blocked") return text;
  const node = document.createNode(value, { flow: isShort(value) }) as Node;
  document.setIn(keys, node);
  return printed(document);
};

/** Places and lists of places stand on one line. */
const isShort = (value: Entry): boolean =>
  Array.isArray(value) &&
  value.length <= 12 &&
  value.every((item) => typeof item !== "object" || isShort(item as Entry));
