import { isMap, isScalar, isSeq } from "yaml";
import { parseSource } from "../reading/parse-source.ts";

/** A job file as written: texts as the person wrote them, groups and lists of these. Nothing written is undefined. */
export type WrittenTree = string | readonly WrittenTree[] | { readonly [key: string]: WrittenTree } | undefined;

/** The whole file as written; undefined when it cannot be read at all. */
export const writtenTree = (text: string): WrittenTree =>
  plain(parseSource(text, { issues: [], warnings: [], load: undefined, outline: undefined })?.root);

const plain = (node: unknown): WrittenTree => {
  if (isScalar(node)) return node.value === null ? undefined : (node.source ?? String(node.value));
  if (isMap(node))
    return Object.fromEntries(
      node.items.map(({ key, value }) => [String(isScalar(key) ? key.value : key), plain(value)]),
    );
  return isSeq(node) ? node.items.map(plain) : undefined;
};
