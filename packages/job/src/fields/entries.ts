import { isMap, isScalar, type Node, type YAMLMap } from "yaml";
import { didYouMean } from "../issues/did-you-mean.ts";
import { at, type Place, report } from "../reading/place.ts";

export interface Entry {
  readonly key: Node;
  readonly value: Node | null;
}

/**
 * `{ weight: 3,000 lb }` reads as weight 3 and a key "000 lb": reported once, and put together again so that the rest of
 * the group is read as it was meant.
 */
const mendSplitNumbers = (map: YAMLMap, place: Place): ReadonlySet<unknown> => {
  const split = new Set<unknown>();
  map.items.forEach((pair, i) => {
    const before = map.items[i - 1]?.value;
    const tail = isScalar(pair.key) ? String(pair.key.source ?? pair.key.value) : "";
    if (pair.value !== null || !/^\d{3}(?!\d)/.test(tail)) return;
    if (!isScalar(before) || !/^\d{1,3}$/.test(before.source ?? "")) return;
    const meant = `${before.source},${tail}`;
    report(place, before as Node, "comma-in-braces", {
      got: meant,
      message: `"${meant}" is cut in two at its comma, because it stands in braces.`,
      hint: `Put it in quotes, or write ${meant.replace(",", "")}.`,
    });
    before.value = meant;
    split.add(pair);
  });
  return split;
};

/** The keys of a group and their values, each once; keys that do not belong are reported, and read
 * as the key probably meant, so that mistakes below them are found as well. Undefined when it is no group. */
export const entriesOf = (
  node: Node,
  place: Place,
  allowed: readonly string[],
  what: string,
): Map<string, Entry> | undefined => {
  if (!isMap(node)) {
    report(place, node, "not-a-group", {
      got: isScalar(node) ? (node.source ?? String(node.value)) : "a list",
      message: `${isScalar(node) ? `"${String(node.source ?? node.value).slice(0, 60)}"` : "A list"} stands where the keys of ${what} were expected.`,
      hint: `Write its keys on lines of their own, such as ${allowed.slice(0, 3).join(", ")}.`,
    });
    return undefined;
  }
  const found = new Map<string, Entry>();
  const split = mendSplitNumbers(node, place);
  for (const pair of node.items) {
    if (split.has(pair)) continue;
    const key = pair.key as Node;
    const name = isScalar(key) ? (typeof key.value === "string" ? key.value : (key.source ?? String(key.value))) : "?";
    const there = at(place, name.slice(0, 60));
    if (!allowed.includes(name)) {
      const meant = didYouMean(name, allowed);
      report(there, key, "unknown-key", {
        got: name,
        message: `"${name.slice(0, 60)}" is not a key of ${what}.`,
        hint: meant ? `Did you mean ${meant}?` : `Keys here: ${allowed.join(", ")}.`,
      });
      if (meant && !node.has(meant) && !found.has(meant)) found.set(meant, { key, value: pair.value as Node | null });
    } else if (found.has(name)) {
      report(there, key, "duplicate-key", {
        got: name,
        message: `The key "${name}" stands twice.`,
        hint: "Keep one of them.",
      });
    } else {
      found.set(name, { key, value: pair.value as Node | null });
    }
  }
  return found;
};

/** Was a key of this group reported and left out? What it may have said is then not missed a second time. */
export const keyRejected = (node: Node, entries: ReadonlyMap<string, Entry>): boolean =>
  isMap(node) && entries.size < node.items.length;
