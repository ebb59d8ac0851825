import type { WrittenTree } from "../listing/index.ts";
import { writtenTree } from "../listing/index.ts";
import { addToList, type Entry } from "./add-to-list.ts";
import { setFact } from "./set-fact.ts";
import { setPlain } from "./set-plain.ts";

interface Change {
  readonly path: string;
  readonly kind: "set" | "add";
  readonly to: WrittenTree;
}

export type Merged =
  | { readonly ok: true; readonly text: string }
  /** places both wrote differently */
  | { readonly ok: false; readonly paths: readonly string[] };

type Group = { readonly [key: string]: WrittenTree };
const isList = (tree: WrittenTree): tree is readonly WrittenTree[] => Array.isArray(tree);
const isGroup = (tree: WrittenTree): tree is Group => typeof tree === "object" && !isList(tree);
const same = (a: WrittenTree, b: WrittenTree): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What I changed since the common text; a place changed by both, and differently, stands in `clashes`. */
const changesOf = (
  base: WrittenTree,
  mine: WrittenTree,
  theirs: WrittenTree,
  path: string,
  clashes: string[],
): readonly Change[] => {
  if (same(mine, base) || same(mine, theirs)) return [];
  if (isGroup(mine) && isGroup(theirs) && (base === undefined || isGroup(base))) {
    const keys = new Set([...Object.keys(base ?? {}), ...Object.keys(mine)]);
    return [...keys].flatMap((key) =>
      changesOf(base?.[key], mine[key], theirs[key], path === "" ? key : `${path}.${key}`, clashes),
    );
  }
  if (isList(mine) && isList(theirs) && (base === undefined || isList(base))) {
    const before = base ?? [];
    if (mine.length >= before.length && theirs.length >= before.length)
      return [
        ...before.flatMap((item, i) => changesOf(item, mine[i], theirs[i], `${path}[${i}]`, clashes)),
        ...mine.slice(before.length).map((to): Change => ({ path, kind: "add", to })),
      ];
  }
  if (!same(base, theirs)) {
    clashes.push(path);
    return [];
  }
  return [{ path, kind: "set", to: mine }];
};

/**
 * Brings what I changed since `base` into what somebody else made of it. Places are compared as written, entries added to
 * a list by either side all stay.
 */
export const mergeTexts = (base: string, mine: string, theirs: string): Merged => {
  const clashes: string[] = [];
  const trees = [base, mine, theirs].map(writtenTree) as [WrittenTree, WrittenTree, WrittenTree];
  if (trees.some((tree) => !isGroup(tree))) return { ok: false, paths: [""] };
  const changes = changesOf(...trees, "", clashes);
  if (clashes.length > 0) return { ok: false, paths: clashes };
  const text = changes.reduce((made, { path, kind, to }) => {
    if (kind === "add") return addToList(made, path, (to ?? "unknown") as Entry) ?? made;
    return typeof to === "string" ? setFact(made, path, to) : setPlain(made, path, to as Entry | undefined);
  }, theirs);
  return same(writtenTree(text), writtenTree(theirs)) && changes.length > 0
    ? { ok: false, paths: changes.map(({ path }) => path) }
    : { ok: true, text };
};
