import { Clipper, FillRule } from "clipper2-ts";
import type { Polygon } from "../geometry/index.ts";
import { polygonToGrid, toGrid } from "./fine-grid.ts";
import { counterClockwise, PARTS, type Shapes } from "./lift-footprint.ts";
import { heldInside, type Room } from "./obstacle.ts";

/**
 * Origins for which one point of every shape the room holds is inside it, as grid polygons. Together with the walls' zones that
 * puts every shape inside as a whole: a shape is in one piece and crosses no wall. The pieces have no holes.
 */
export const insideRoom = (room: Room, shapes: Shapes): readonly Polygon[] => {
  const outline = polygonToGrid(counterClockwise(room.outline));
  const parts = PARTS.filter((part) => heldInside(room, part) === "held");
  const seen = parts.flatMap((part) => shapes[part].map((shape) => toGrid(shape[0]!)));
  return (
    seen.reduce<readonly Polygon[] | undefined>((left, at) => {
      const shifted = outline.map((p) => ({ x: p.x - at.x, y: p.y - at.y }));
      return left
        ? Clipper.intersect(
            left.map((p) => [...p]),
            [shifted],
            FillRule.NonZero,
          )
        : [shifted];
    }, undefined) ?? []
  );
};
