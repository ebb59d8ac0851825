import type { Polygon, Segment } from "../geometry/index.ts";
import { GROWTH, polygonToGrid, STEPS_PER_MM } from "./fine-grid.ts";
import { counterClockwise, PARTS, type Part, type Shapes } from "./lift-footprint.ts";
import { minkowskiSum, type Sum } from "./minkowski-sum.ts";
import { type Clear, heldInside, type Obstacle, type Room } from "./obstacle.ts";
import { roundOffset } from "./round-offset.ts";

/** Where one obstacle keeps the lift's origin out because of one part: within `clear` of the sums. */
export interface Zone {
  readonly id: string;
  readonly name: string;
  readonly part: Part;
  /** mm */
  readonly clear: number;
  /** one per shape of the part, on the grid */
  readonly sums: readonly Sum[];
}

/** The zones of obstacles. A line that may be touched keeps a mere point nowhere out, and makes no zone. */
export const obstacleZones = (obstacles: readonly Obstacle[], shapes: Shapes): readonly Zone[] =>
  obstacles
    .flatMap((o) => zones(o.id, o.name, asPolygon(o.shape), o.clear, shapes))
    .filter((zone) => zone.clear > 0 || zone.sums.some((sum) => sum.rings.some((ring) => ring.length >= 3)));

/** The zones of a room's walls; where no clearance is set, 0. */
export const wallZones = (room: Room, shapes: Shapes): readonly Zone[] => {
  const { outline, sides, clear } = room;
  const parts = PARTS.filter((part) => heldInside(room, part) === "held");
  const held: Clear = Object.fromEntries(parts.map((part) => [part, clear[part] ?? 0]));
  return outline.flatMap((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    return zones(`wall-${i + 1}`, sides?.[i] ?? `wall ${i + 1}`, [a, b], held, shapes);
  });
};

/** The grown polygons a zone is made of, on the grid, each counter-clockwise; rounds at most `tolerance` (mm) too large. */
export const zonePolygons = ({ clear, sums }: Zone, tolerance: number): readonly Polygon[] => {
  const r = clear * STEPS_PER_MM + GROWTH;
  return sums.flatMap(({ hulls, fills }) => [
    ...hulls.map((hull) => roundOffset(hull, r, tolerance * STEPS_PER_MM)),
    ...fills,
  ]);
};

const zones = (id: string, name: string, shape: Polygon, clear: Clear, shapes: Shapes): readonly Zone[] => {
  const obstacle = polygonToGrid(counterClockwise(shape));
  return PARTS.flatMap((part) => {
    const held = clear[part];
    if (held === undefined || shapes[part].length === 0) return [];
    const sums = shapes[part].map((s) => minkowskiSum(obstacle, polygonToGrid(s)));
    return [{ id, name, part, clear: held, sums }];
  });
};

const asPolygon = (shape: Segment | Polygon): Polygon => ("a" in shape ? [shape.a, shape.b] : shape);
