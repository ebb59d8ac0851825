import type { Layout, PlacedBase } from "@floorworthy/assess";
import type { Point, Rect } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";

/** The part of the plan a drawing shows, mm, and how big its letters are, mm. */
export interface Frame {
  /** what is measured from: the bay's walls, or the base plate */
  readonly inside: Rect;
  /** with room for dimensions */
  readonly outside: Rect;
  readonly letters: number;
}

/** The whole bay; where nobody drew one, what is known to stand in it. */
export const bayFrame = (layout: Layout, job: Job): Frame => {
  const known = layout.outline ??
    job.bay.outline ?? [
      { x: 0, y: 0 },
      ...layout.bases.flatMap(({ outline }) => outline).map(({ x, y }) => ({ x: x + 900, y: y + 900 })),
      ...layout.zones.flatMap(({ outline }) => outline),
      ...job.floor.joints.flatMap(({ from, to }) => [from, to]),
    ];
  return framed(
    rectAround(
      known.length > 1
        ? known
        : [
            { x: 0, y: 0 },
            { x: 6000, y: 6000 },
          ],
    ),
    0.15,
  );
};

/** One base plate and the floor near it. */
export const baseFrame = (base: PlacedBase): Frame => framed(rectAround([...base.outline, base.centre]), 0.75);

const framed = (inside: Rect, room: number): Frame => {
  const size = Math.max(inside.x1 - inside.x0, inside.y1 - inside.y0);
  const outside = {
    x0: inside.x0 - room * size,
    y0: inside.y0 - room * size,
    x1: inside.x1 + (room < 0.5 ? 0.06 : room) * size,
    y1: inside.y1 + (room < 0.5 ? 0.06 : room) * size,
  };
  return { inside, outside, letters: Math.max(outside.x1 - outside.x0, outside.y1 - outside.y0) / 38 };
};

export const rectAround = (points: readonly Point[]): Rect => ({
  x0: Math.min(...points.map(({ x }) => x)),
  y0: Math.min(...points.map(({ y }) => y)),
  x1: Math.max(...points.map(({ x }) => x)),
  y1: Math.max(...points.map(({ y }) => y)),
});

/** SVG points of a line or polygon. */
export const pointList = (points: readonly Point[]): string => points.map(({ x, y }) => `${x},${y}`).join(" ");
