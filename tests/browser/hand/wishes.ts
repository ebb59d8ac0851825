import { parse } from "yaml";

/** What is to be written at which place of a job; a list is there with so many entries. */
export interface Wishes {
  readonly written: ReadonlyMap<string, string>;
  readonly lists: ReadonlyMap<string, number>;
}

type Tree = string | number | readonly Tree[] | { readonly [key: string]: Tree };

const isPoint = (tree: Tree): tree is readonly [string, string] =>
  Array.isArray(tree) &&
  tree.length === 2 &&
  tree.every((each) => typeof each === "string" || typeof each === "number");

/** A piece of a job file, as the fields of the page that a person would fill. */
export const wishesOf = (yaml: string): Wishes => {
  const written = new Map<string, string>();
  const lists = new Map<string, number>();
  const walk = (tree: Tree, path: string): void => {
    if (isPoint(tree)) {
      const axes = path.startsWith("lift.") ? ["u", "v"] : ["x", "y"];
      for (const [i, value] of tree.entries()) written.set(`${path}-${axes[i]}`, String(value));
    } else if (Array.isArray(tree)) {
      lists.set(path, tree.length);
      for (const [i, each] of tree.entries()) walk(each as Tree, `${path}[${i}]`);
    } else if (typeof tree === "object")
      for (const [key, each] of Object.entries(tree)) walk(each, path === "" ? key : `${path}.${key}`);
    else written.set(path, String(tree));
  };
  walk(parse(yaml) as Tree, "");
  return { written, lists };
};
