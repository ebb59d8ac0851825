import type { WrittenTree } from "@floorworthy/job/listing";

export type WrittenGroup = { readonly [key: string]: WrittenTree };

export const isGroup = (tree: WrittenTree): tree is WrittenGroup => typeof tree === "object" && !Array.isArray(tree);
export const isList = (tree: WrittenTree): tree is readonly WrittenTree[] => Array.isArray(tree);

/** What stands at a key of a group; undefined where there is none. */
export const under = (tree: WrittenTree, key: string): WrittenTree => (isGroup(tree) ? tree[key] : undefined);

/** What stands at `floor.readings[2].thickness`. */
export const reach = (tree: WrittenTree, path: string): WrittenTree =>
  [...path.matchAll(/([A-Za-z][\w-]*)|\[(\d+)\]/g)].reduce<WrittenTree>(
    (at, [, key, index]) => (key === undefined ? (isList(at) ? at[Number(index)] : undefined) : under(at, key)),
    tree,
  );

/** A fact's own text: itself, or the value of a fact with a basis; a range as its two ends. */
export const factText = (tree: WrittenTree): string => {
  if (typeof tree === "string") return tree;
  if (!isGroup(tree)) return "";
  const { value, low, high, from, to } = tree;
  if (typeof value === "string") return value;
  const ends = [low ?? from, high ?? to].filter((end) => typeof end === "string");
  return ends.length === 2 ? ends.join(" to ") : "";
};
