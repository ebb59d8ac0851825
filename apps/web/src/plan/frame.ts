import type { PlacedBase } from "@floorworthy/assess";
import type { Point, Rect } from "@floorworthy/engine/geometry";

/** The part of the plan a drawing shows, mm, and how big its letters are, mm. */
export interface Frame {
  /** what is measured */
  readonly inside: Rect;
  /** with room for dimensions */
  readonly outside: Rect;
  readonly letters: number;
}

/** How much floor is shown around a base plate, in plates. */
const around = 0.75;

/** One base plate and the floor near it. */
export const baseFrame = (base: PlacedBase): Frame => {
  const inside = rectAround([...base.outline, base.centre]);
  const room = around * Math.max(inside.x1 - inside.x0, inside.y1 - inside.y0, 100);
  const outside = { x0: inside.x0 - room, y0: inside.y0 - room, x1: inside.x1 + room, y1: inside.y1 + room };
  return { inside, outside, letters: Math.max(outside.x1 - outside.x0, outside.y1 - outside.y0) / 38 };
};

const rectAround = (points: readonly Point[]): Rect => ({
  x0: Math.min(...points.map(({ x }) => x)),
  y0: Math.min(...points.map(({ y }) => y)),
  x1: Math.max(...points.map(({ x }) => x)),
  y1: Math.max(...points.map(({ y }) => y)),
});

/** A path of closed rings. */
export const ringsPath = (rings: readonly (readonly Point[])[]): string =>
  rings.map((ring) => `M${pointList(ring).replaceAll(" ", "L")}Z`).join("");

/** A path of open lines. */
export const linesPath = (lines: readonly (readonly Point[])[]): string =>
  lines.map((line) => `M${pointList(line).replaceAll(" ", "L")}`).join("");

/** SVG points of a line or polygon. */
export const pointList = (points: readonly Point[]): string => points.map(({ x, y }) => `${x},${y}`).join(" ");
