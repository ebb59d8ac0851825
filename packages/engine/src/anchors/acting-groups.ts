import { segmentsMeet } from "../geometry/index.ts";
import type { Anchor, Barrier } from "./anchor-group.ts";

/**
 * The anchors that act together in breakout: chains of neighbours whose squares of side `spacing` (3 hef) overlap and
 * that no barrier parts. ACI 318-19 17.5.1.3.
 */
export const actingGroups = (
  anchors: readonly Anchor[],
  barriers: readonly Barrier[],
  spacing: number,
): readonly (readonly Anchor[])[] => {
  const groups: Anchor[][] = [];
  for (const anchor of anchors) {
    const joined = groups.filter((group) => group.some((other) => actTogether(anchor, other, barriers, spacing)));
    const merged = [...joined.flat(), anchor];
    for (const group of joined) groups.splice(groups.indexOf(group), 1);
    groups.push(merged);
  }
  return groups;
};

const actTogether = (a: Anchor, b: Anchor, barriers: readonly Barrier[], spacing: number): boolean =>
  Math.max(Math.abs(a.x - b.x), Math.abs(a.y - b.y)) < spacing &&
  !barriers.some((barrier) => segmentsMeet(barrier, { a, b }));
