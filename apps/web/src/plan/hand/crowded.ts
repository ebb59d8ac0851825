import type { Thing } from "./things.ts";

/** Does the figure beside a place run into another place or its figure? `letters` is their height, mm of the plan. */
export const isCrowded = (thing: Thing, things: readonly Thing[], letters: number): boolean => {
  const [at] = thing.points;
  if (thing.shape !== "place" || !at) return false;
  const wide = letters * (1.5 + 0.55 * thing.label.length);
  return things.some(({ path, shape, points: [other] }) => {
    if (shape !== "place" || path === thing.path || !other) return false;
    return Math.abs(other.x - at.x) < wide && Math.abs(other.y - at.y) < 1.2 * letters;
  });
};
