export { type Written, writtenFacts } from "./written-facts.ts";
export { type WrittenTree, writtenTree } from "./written-tree.ts";
