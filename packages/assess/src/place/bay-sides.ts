import { distanceToSegment, type Point, type Segment, sides } from "@floorworthy/engine/geometry";
import type { Bay } from "@floorworthy/job";

/** A stretch of the floor's boundary: a wall, a door, or nothing at all. */
export interface BaySide extends Segment {
  readonly what: "wall" | "door" | "open";
  readonly name: string;
}

/** A wall or door this near to the slab's edge stands on it, mm. */
const ON_IT = 300;

/**
 * The boundary of the floor, stretch by stretch. Where the job names walls, a side with neither wall nor door is open;
 * where it names none, whatever is no door counts as wall.
 */
export const baySides = ({ outline, walls, doors }: Pick<Bay, "outline" | "walls" | "doors">): BaySide[] =>
  sides(outline ?? []).flatMap((side, i) => {
    const length = Math.hypot(side.b.x - side.a.x, side.b.y - side.a.y);
    if (length < 1) return [];
    const own = walls.filter((wall) => liesOn(side, wall.from, wall.to));
    const gaps = doors
      .filter((door) => liesOn(side, door.from, door.to))
      .map((door) => ({ name: door.name, span: spanOn(side, length, door.from, door.to) }))
      .sort((p, q) => p.span[0] - q.span[0]);
    const name = own[0]?.name || faceName(side, outline ?? [], i, gaps[0]?.name);
    const rest = walls.length === 0 || own.length > 0 || gaps.length > 0 ? "wall" : "open";
    const at = (t: number): Point => ({
      x: side.a.x + ((side.b.x - side.a.x) * t) / length,
      y: side.a.y + ((side.b.y - side.a.y) * t) / length,
    });
    const made: BaySide[] = [];
    let done = 0;
    for (const { name: door, span } of gaps) {
      if (span[0] - done > 1) made.push({ a: at(done), b: at(span[0]), what: rest, name });
      made.push({ a: at(Math.max(done, span[0])), b: at(span[1]), what: "door", name: door });
      done = Math.max(done, span[1]);
    }
    if (length - done > 1) made.push({ a: at(done), b: at(length), what: rest, name });
    return made;
  });

/** What each side of the outline is called, from its first corner on. */
export const sideNames = ({ outline, walls, doors }: Pick<Bay, "outline" | "walls" | "doors">): string[] =>
  sides(outline ?? []).map((side, i) => {
    const wall = walls.find(({ from, to }) => liesOn(side, from, to));
    const door = doors.find(({ from, to }) => liesOn(side, from, to));
    return wall?.name || (door ? `edge at ${door.name}` : faceName(side, outline ?? [], i, undefined));
  });

const liesOn = (side: Segment, from: Point, to: Point): boolean => {
  if (distanceToLineOf(side, from) > ON_IT || distanceToLineOf(side, to) > ON_IT) return false;
  const length = Math.hypot(side.b.x - side.a.x, side.b.y - side.a.y);
  const [t0, t1] = spanOn(side, length, from, to);
  return t1 - t0 > 1;
};

const distanceToLineOf = ({ a, b }: Segment, p: Point): number => {
  const far = 1e6;
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const [ux, uy] = [(b.x - a.x) / length, (b.y - a.y) / length];
  return distanceToSegment(p, {
    a: { x: a.x - far * ux, y: a.y - far * uy },
    b: { x: b.x + far * ux, y: b.y + far * uy },
  });
};

const spanOn = ({ a, b }: Segment, length: number, from: Point, to: Point): readonly [number, number] => {
  const along = (p: Point): number => ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length;
  const [s, t] = [along(from), along(to)];
  return [Math.max(0, Math.min(s, t)), Math.min(length, Math.max(s, t))];
};

/** What a side is called by where it lies: the plan's y runs from the back wall to the door. */
const faceName = ({ a, b }: Segment, outline: readonly Point[], i: number, door: string | undefined): string => {
  if (door) return `wall beside ${door}`;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const xs = outline.map((p) => p.x);
  const ys = outline.map((p) => p.y);
  const near = (v: number, to: number): boolean => Math.abs(v - to) < 1;
  if (Math.abs(dy) < 1 && near(a.y, Math.min(...ys))) return "back wall";
  if (Math.abs(dy) < 1 && near(a.y, Math.max(...ys))) return "front of the bay";
  if (Math.abs(dx) < 1 && near(a.x, Math.min(...xs))) return "left wall";
  if (Math.abs(dx) < 1 && near(a.x, Math.max(...xs))) return "right wall";
  return `side ${i + 1} of the floor`;
};
