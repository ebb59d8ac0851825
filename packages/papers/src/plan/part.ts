import type { Ground, Item } from "../drawing/drawing.ts";
import type { Wanted } from "../drawing/place-labels.ts";

/** What one part of the plan puts on the paper: items in model mm, and labels that still want a place. */
export interface Part {
  readonly items: readonly Exclude<Item, Ground>[];
  readonly wanted: readonly Omit<Wanted, "target" | "size">[];
}

export const nothing: Part = { items: [], wanted: [] };

export const together = (parts: readonly Part[]): Part => ({
  items: parts.flatMap((part) => part.items),
  wanted: parts.flatMap((part) => part.wanted),
});
