import { isScalar, type Node } from "yaml";

/** The word that says nobody knows. */
export const isUnknownWord = (node: Node): boolean =>
  isScalar(node) && typeof node.value === "string" && /^\s*unknown\s*$/i.test(node.value);
