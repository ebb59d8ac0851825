import type { WrittenTree } from "@floorworthy/job/listing";
import { factText, isGroup, isList } from "./reach.ts";

/** How many facts are written at a place; what is written as unknown is none. */
export const writtenIn = (tree: WrittenTree): number => {
  if (tree === undefined || tree === "unknown") return 0;
  if (isList(tree)) return tree.length;
  if (!isGroup(tree) || factText(tree) !== "") return 1;
  return Object.values(tree).reduce<number>((sum, inner) => sum + writtenIn(inner), 0);
};
