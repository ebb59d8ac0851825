import { type Point, type Polygon, polygonCentroid } from "@floorworthy/engine/geometry";
import type { Bay, Door, Wall } from "@floorworthy/job";
import { printFeet, type UnitSystem } from "../print/measure.ts";
import { WALL } from "./extents.ts";
import { nothing, type Part } from "./part.ts";

const lengthOf = (from: Point, to: Point) => Math.hypot(to.x - from.x, to.y - from.y);

/** Where along the wall (0 to its length) a door in it begins and ends; undefined when the door is in another wall. */
const gapOf = (wall: Wall, door: Door, length: number): readonly [number, number] | undefined => {
  const u = { x: (wall.to.x - wall.from.x) / length, y: (wall.to.y - wall.from.y) / length };
  const along = (p: Point) => (p.x - wall.from.x) * u.x + (p.y - wall.from.y) * u.y;
  const aside = (p: Point) => Math.abs((p.y - wall.from.y) * u.x - (p.x - wall.from.x) * u.y);
  if (aside(door.from) > 1.5 * WALL || aside(door.to) > 1.5 * WALL) return undefined;
  const [a, b] = [along(door.from), along(door.to)].sort((p, q) => p - q) as [number, number];
  return b <= 0 || a >= length ? undefined : [Math.max(0, a), Math.min(length, b)];
};

/** The stretches of wall left between its doors. */
export const stretchesOf = (wall: Wall, doors: readonly Door[]): readonly (readonly [number, number])[] => {
  const length = lengthOf(wall.from, wall.to);
  if (!(length > 0)) return [];
  const gaps = doors.flatMap((door) => gapOf(wall, door, length) ?? []);
  const pairs: [number, number][] = [];
  for (let i = 0; i + 1 < gaps.length; i += 2) pairs.push([gaps[i]!, gaps[i + 1]!]);
  pairs.sort((p, q) => p[0] - q[0]);
  const stretches: [number, number][] = [];
  let start = 0;
  for (const [a, b] of pairs) {
    if (a - start > 1) stretches.push([start, a]);
    start = Math.max(start, b);
  }
  if (length - start > 1) stretches.push([start, length]);
  return stretches;
};

/** From the inner to the outer face, away from the middle of the floor. */
const outward = (from: Point, to: Point, middle: Point): Point => {
  const length = lengthOf(from, to);
  const u = { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  const side = (middle.x - from.x) * -u.y + (middle.y - from.y) * u.x > 0 ? -1 : 1;
  return { x: -u.y * side * WALL, y: u.x * side * WALL };
};

const wallItems = (wall: Wall, doors: readonly Door[], middle: Point): Part["items"] => {
  const length = lengthOf(wall.from, wall.to);
  if (!(length > 0)) return [];
  const u = { x: (wall.to.x - wall.from.x) / length, y: (wall.to.y - wall.from.y) / length };
  const out = outward(wall.from, wall.to, middle);
  const on = (t: number): Point => ({ x: wall.from.x + u.x * t, y: wall.from.y + u.y * t });
  return stretchesOf(wall, doors).map(([a, b]) => {
    const [p, q] = [on(a), on(b)];
    const points = [p, q, { x: q.x + out.x, y: q.y + out.y }, { x: p.x + out.x, y: p.y + out.y }];
    return { kind: "polygon", tag: "walls", points, pen: "wall", hatch: "diagonal" };
  });
};

/** A gap in the wall, dashed along its outer face. */
const doorPart = (door: Door, middle: Point, units: UnitSystem): Part => {
  const width = lengthOf(door.from, door.to);
  if (!(width > 0)) return nothing;
  const out = outward(door.from, door.to, middle);
  const outer = (p: Point): Point => ({ x: p.x + out.x, y: p.y + out.y });
  const jamb = (p: Point) => ({ kind: "line", tag: "doors", from: p, to: outer(p), pen: "edge" }) as const;
  const at = outer({
    x: door.from.x + (door.to.x - door.from.x) * 0.4,
    y: door.from.y + (door.to.y - door.from.y) * 0.4,
  });
  const [from, to] = [outer(door.from), outer(door.to)];
  return {
    items: [{ kind: "line", tag: "doors", from, to, pen: "hidden" }, jamb(door.from), jamb(door.to)],
    wanted: [
      {
        tag: "labels",
        words: `${door.name}, ${printFeet(width, units)}${units === "si" ? " mm" : ""} wide`,
        lettering: "regular",
        at,
      },
    ],
  };
};

export const wallsPart = ({ walls, doors, posts, obstacles }: Bay, outline: Polygon, units: UnitSystem): Part => {
  const middle = polygonCentroid(outline);
  const made = doors.map((door) => doorPart(door, middle, units));
  const standing = [
    ...posts.map((p) => ({ ...p, hatch: "ink" as const })),
    ...obstacles.map((p) => ({ ...p, hatch: "diagonal" as const })),
  ];
  return {
    items: [
      ...walls.flatMap((wall) => wallItems(wall, doors, middle)),
      ...made.flatMap((part) => part.items),
      ...standing.map(
        ({ outline: points, hatch }) => ({ kind: "polygon", tag: "obstacles", points, pen: "wall", hatch }) as const,
      ),
    ],
    wanted: [
      ...made.flatMap((part) => part.wanted),
      ...standing.map(
        ({ name, outline: points }) => ({ tag: "labels", words: name, lettering: "regular", at: points[0]! }) as const,
      ),
    ],
  };
};
