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

/** What becomes of a place both wrote differently: it is told and nothing is merged, or one of them goes on there. */
export type AtClash = "tell" | "mine" | "theirs";

type Group = { readonly [key: string]: WrittenTree };
const isList = (tree: WrittenTree): tree is readonly WrittenTree[] => Array.isArray(tree);
const isGroup = (tree: WrittenTree): tree is Group => typeof tree === "object" && !isList(tree);
const same = (a: WrittenTree, b: WrittenTree): boolean => JSON.stringify(a) === JSON.stringify(b);

/** What I changed since the common text; a place changed by both, and differently, is given to `clash`. */
const changesOf = (
  base: WrittenTree,
  mine: WrittenTree,
  theirs: WrittenTree,
  path: string,
  clash: (change: Change) => readonly Change[],
): readonly Change[] => {
  if (same(mine, base) || same(mine, theirs)) return [];
  if (isGroup(mine) && isGroup(theirs) && (base === undefined || isGroup(base))) {
    const keys = new Set([...Object.keys(base ?? {}), ...Object.keys(mine)]);
    return [...keys].flatMap((key) =>
      changesOf(base?.[key], mine[key], theirs[key], path === "" ? key : `${path}.${key}`, clash),
    );
  }
  if (isList(mine) && isList(theirs) && (base === undefined || isList(base))) {
    const before = base ?? [];
    if (mine.length >= before.length && theirs.length >= before.length)
      return [
        ...before.flatMap((item, i) => changesOf(item, mine[i], theirs[i], `${path}[${i}]`, clash)),
        ...mine.slice(before.length).map((to): Change => ({ path, kind: "add", to })),
      ];
  }
  const change: Change = { path, kind: "set", to: mine };
  return same(base, theirs) ? [change] : clash(change);
};

/**
 * Brings what I changed since `base` into what somebody else made of it. Places are compared as written, entries added to
 * a list by either side all stay.
 */
export const mergeTexts = (base: string, mine: string, theirs: string, atClash: AtClash = "tell"): Merged => {
  const trees = [base, mine, theirs].map(writtenTree) as [WrittenTree, WrittenTree, WrittenTree];
  if (trees.some((tree) => !isGroup(tree)))
    return atClash === "tell" ? { ok: false, paths: [""] } : { ok: true, text: atClash === "mine" ? mine : theirs };
  const clashes: string[] = [];
  const changes = changesOf(...trees, "", (change) => {
    clashes.push(change.path);
    return atClash === "mine" ? [change] : [];
  });
  if (atClash === "tell" && clashes.length > 0) return { ok: false, paths: clashes };
  const text = changes.reduce((made, { path, kind, to }) => {
    if (kind === "add") return addToList(made, path, (to ?? "unknown") as Entry) ?? made;
    return typeof to === "string" ? setFact(made, path, to) : setPlain(made, path, to as Entry | undefined);
  }, theirs);
  if (changes.length === 0 || !same(writtenTree(text), writtenTree(theirs))) return { ok: true, text };
  return atClash === "tell" ? { ok: false, paths: changes.map(({ path }) => path) } : { ok: true, text: mine };
};
