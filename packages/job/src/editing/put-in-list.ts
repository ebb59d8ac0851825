import { type Document, isMap, isScalar, isSeq, type Node, parseDocument, type YAMLMap, type YAMLSeq } from "yaml";
import { yamlOptions } from "../reading/parse-source.ts";
import { addToList, type Entry } from "./add-to-list.ts";
import { parsePath } from "./path.ts";

type Group = { readonly [key: string]: Entry };
const isGroup = (entry: Entry | undefined): entry is Group => typeof entry === "object" && !Array.isArray(entry);
const isList = (entry: Entry | undefined): entry is readonly Entry[] => Array.isArray(entry);

const textOf = (node: unknown): string =>
  isSeq(node)
    ? node.items.map(textOf).join(" ")
    : isScalar(node)
      ? String(node.source ?? node.value)
          .trim()
          .toUpperCase()
      : "";

const keyText = (entry: Entry | undefined): string =>
  isList(entry)
    ? entry.map(keyText).join(" ")
    : String(entry ?? "")
        .trim()
        .toUpperCase();

/**
 * Puts an entry into a list: where one of the same name stands there already, what is new is written into that one and the
 * rest of it stays; else it is added, days in their order.
 * @param by - the key that names an entry, one for each depth of list: `["date", "anchor"]` joins a visit of the same day and
 *   in it the readings of the same anchor
 * @returns the new text; undefined when the file is no YAML or something that is no list stands there
 */
export const putInList = (text: string, path: string, entry: Entry, by: readonly string[]): string | undefined => {
  const keys = parsePath(path);
  const document = parseDocument(text, yamlOptions) as unknown as Document;
  if (!keys || document.errors.length > 0 || !isMap(document.contents)) return undefined;
  const list = document.getIn(keys, true);
  if (!isSeq(list) || !isGroup(entry)) return addToList(text, path, entry);
  put(document, list as YAMLSeq, entry, by);
  return document.toString({ lineWidth: 0, flowCollectionPadding: true });
};

const put = (document: Document, list: YAMLSeq, entry: Entry, by: readonly string[]): void => {
  const [key = "", ...inner] = by;
  const name = isGroup(entry) ? keyText(entry[key]) : "";
  const named = (item: unknown): string => (isMap(item) ? textOf(item.get(key, true)) : "");
  const there = name === "" ? undefined : list.items.find((item) => named(item) === name);
  if (isMap(there) && isGroup(entry)) {
    for (const [own, value] of Object.entries(entry))
      if (own !== key) join(document, there as YAMLMap, own, value, inner);
    return;
  }
  if (list.items.length === 0) list.flow = false;
  const node = document.createNode(entry) as Node;
  const later = isDay(name) ? list.items.findIndex((item) => isDay(named(item)) && named(item) > name) : -1;
  if (later < 0) list.add(node);
  else list.items.splice(later, 0, node);
};

const join = (document: Document, group: YAMLMap, key: string, value: Entry, by: readonly string[]): void => {
  const there = group.get(key, true);
  if (isList(value) && isSeq(there) && by.length > 0)
    for (const item of value) put(document, there as YAMLSeq, item, by);
  else group.set(key, document.createNode(value));
};

const isDay = (name: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(name);
