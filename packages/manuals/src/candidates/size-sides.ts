import type { FoundValue } from "../values/index.ts";
import type { FieldName } from "./field-names.ts";
import type { Statement } from "./statement.ts";
import type { Mention } from "./subjects.ts";

/** Sides of a size: a plate's width, depth and thickness; an anchor's diameter and length. */
export const sideOf = (
  value: FoundValue,
  statement: Statement,
  mentions: readonly Mention[],
): { readonly field: FieldName; readonly subject: "named" | "led" } | undefined => {
  if (!value.size) return undefined;
  const { group, side, sides } = value.size;
  const near = (mentions.findLast((m) => m.to <= group) ?? mentions.find((m) => m.from >= group))?.subject;
  const subject = near ?? statement.lead.find((s) => s === "plate" || s === "anchor");
  const how = near ? "named" : "led";
  if (/(?:hole|bolt) (?:pattern|spacing|layout)/i.test(statement.text) && subject !== "concrete") {
    const field = (["anchors.patternAcross", "anchors.patternAlong"] as const)[side];
    return field && { field, subject: how };
  }
  if (subject === "plate") {
    const field = (["base.width", "base.depth", "base.thickness"] as const)[side];
    return field && { field, subject: how };
  }
  if (subject === "anchor" && sides === 2) {
    const field = (["anchors.product.diameter", "anchors.product.length"] as const)[side];
    return field && { field, subject: how };
  }
  if (subject === "concrete" && sides === 3 && side === 2) return { field: "asks.thickness", subject: "led" };
  return undefined;
};
