import { isMap, isScalar, type Node } from "yaml";
import { type Place, report } from "../reading/place.ts";

/** The text of a single value as written (a number keeps its digits); undefined after reporting when it is not one. */
export const scalarText = (node: Node, place: Place, expected: string, hint: string): string | undefined => {
  if (isScalar(node)) return typeof node.value === "string" ? node.value : (node.source ?? String(node.value));
  report(place, node, "not-a-value", {
    got: isMap(node) ? "a group of keys" : "a list",
    message: `${isMap(node) ? "A group of keys" : "A list"} stands where ${expected} was expected.`,
    hint,
  });
  return undefined;
};

/** Nothing written after the colon. */
export const isEmpty = (node: Node | null | undefined): boolean =>
  node === null || node === undefined || (isScalar(node) && node.value === null && (node.source ?? "") !== "unknown");
