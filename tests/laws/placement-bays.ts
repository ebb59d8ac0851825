/**
 * Random bays for the laws of placement, and the judgement of one position by brute force. Whatever is not convex is here
 * also given as convex pieces, so that brute force needs only distances of convex shapes.
 */
import { distanceToSegment, type Point, type Polygon, sides } from "@floorworthy/engine/geometry";
import type { Generator } from "@floorworthy/engine/numerics";
import type { Clear, LiftFootprint, Obstacle, Part, Room, Turn } from "@floorworthy/engine/placement";

export interface Bay {
  readonly footprint: LiftFootprint;
  readonly room: Room;
  readonly obstacles: readonly Obstacle[];
  readonly turns: readonly Turn[];
  /** the same, in convex pieces */
  readonly parts: Readonly<Record<Part, readonly Polygon[]>>;
  readonly barriers: readonly { readonly pieces: readonly Polygon[]; readonly clear: Clear }[];
}

const box = (x0: number, y0: number, x1: number, y1: number): Polygon => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

/** An L: a box without its corner at (x1, y1), as a whole and as two boxes. */
const ell = (x0: number, y0: number, x1: number, y1: number, cx: number, cy: number) => ({
  whole: [...box(x0, y0, x1, y1).slice(0, 2), { x: x1, y: cy }, { x: cx, y: cy }, { x: cx, y: y1 }, { x: x0, y: y1 }],
  pieces: [box(x0, y0, x1, cy), box(x0, y0, cx, y1)],
});

/** The least of (distance − clearance) over every part and barrier at `p`, mm; stops early once it is below `enough`. */
export const slack = ({ parts, barriers }: Bay, turn: Turn, p: Point, enough: number): number => {
  const [c, s] = [Math.cos(turn.angle), Math.sin(turn.angle)];
  const place = (q: Point): Point => {
    const x = turn.mirror === "mirrored" ? -q.x : q.x;
    return { x: p.x + c * x - s * q.y, y: p.y + s * x + c * q.y };
  };
  let least = Number.POSITIVE_INFINITY;
  for (const part of ["vehicle", "body", "plates", "anchors", "path"] as const) {
    for (const shape of parts[part].map((piece) => piece.map(place)))
      for (const { pieces, clear } of barriers) {
        const held = clear[part];
        if (held === undefined) continue;
        for (const piece of pieces) least = Math.min(least, convexDistance(piece, shape, least + held) - held);
        if (least < enough) return least;
      }
  }
  return least;
};

/** Distance of two convex shapes (points and lines too); where they overlap, minus the least move apart. From `far` on, far. */
const convexDistance = (p: Polygon, q: Polygon, far: number): number => {
  const gap = Math.max(separation(p, q), separation(q, p));
  if (gap < 0) return gap;
  if (gap >= far) return far;
  let least = Number.POSITIVE_INFINITY;
  for (const side of sides(p)) for (const v of q) least = Math.min(least, distanceToSegment(v, side));
  for (const side of sides(q)) for (const v of p) least = Math.min(least, distanceToSegment(v, side));
  return least;
};

/** The widest gap seen along the normals of p's sides, both ways; negative where their shadows overlap on all of them. */
const separation = (p: Polygon, q: Polygon): number => {
  let widest = Number.NEGATIVE_INFINITY;
  for (const { a, b } of sides(p)) {
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    if (length === 0) continue; // a point has no side
    const [nx, ny] = [(b.y - a.y) / length, (a.x - b.x) / length];
    const [p0, p1] = shadow(p, nx, ny);
    const [q0, q1] = shadow(q, nx, ny);
    widest = Math.max(widest, q0 - p1, p0 - q1);
  }
  return widest;
};

const shadow = (p: Polygon, nx: number, ny: number): readonly [number, number] => {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  for (const { x, y } of p) [low, high] = [Math.min(low, nx * x + ny * y), Math.max(high, nx * x + ny * y)];
  return [low, high];
};

/** Two stretches of wall with a door between them, which only the way in must miss. */
const doorJambs = (W: number, D: number, aside: number, clear: number) => {
  const line = (x0: number, x1: number): Polygon => [
    { x: x0, y: D },
    { x: x1, y: D },
  ];
  const middle = W / 2 + aside - 200;
  return [line(-500, middle - 1500), line(middle + 1500, W + 500)].map((shape) => ({
    shape: { a: shape[0]!, b: shape[1]! },
    pieces: [shape],
    clear: { path: clear },
  }));
};

export const randomBay = (next: Generator): Bay => {
  const between = (low: number, high: number): number => low + (high - low) * next();
  const whole = (low: number, high: number): number => Math.round(between(low, high));
  const half = whole(900, 1500);
  const plate = whole(180, 300);
  const tail = whole(1400, 2200);
  const wide = whole(700, 950);
  const lift = {
    anchors: [-1, 1].flatMap((side) =>
      [-1, 1].map((v) => ({ x: side * half + whole(-120, 120), y: v * whole(80, 160) })),
    ),
    plates: [box(-half - plate, -plate, -half + plate, plate), box(half - plate, -plate, half + plate, plate)],
    body: ell(-half - plate - 50, -plate - 50, half + plate + 50, plate + whole(100, 400), whole(-300, 600), plate),
    vehicle: box(-wide, -whole(1200, 1800), wide, tail),
    // driven in straight from far beyond the room; about half the lifts have a way in
    path: next() < 0.5 ? box(-wide, -1000, wide, 9000) : undefined,
  };
  const [W, D] = [whole(5200, 7000), whole(5200, 7000)];
  const notched = next() < 0.4;
  const [cx, cy] = notched ? [W - whole(300, 1800), D - whole(300, 1800)] : [W, D];
  const far = 50_000;
  const outside = [
    box(-far, -far, 0, far),
    box(-far, -far, far, 0),
    box(W, -far, far, far),
    box(-far, D, far, far),
    ...(notched ? [box(cx, cy, far, far)] : []),
  ];
  // a vehicle may reach out over an open side, or keeps off the walls as everything else does
  const free = next() < 0.3;
  const held: Clear = {
    anchors: whole(0, 200),
    plates: next() < 0.5 ? 0 : whole(0, 150),
    body: 0,
    ...(free ? {} : { vehicle: whole(0, 300) }),
  };
  const jambs = lift.path ? doorJambs(W, D, whole(0, 400), whole(0, 100)) : [];
  const made = Array.from({ length: whole(1, 6) }, (_, i) => {
    const clear = (
      [
        { anchors: whole(30, 250), plates: whole(0, 80) },
        { vehicle: whole(0, 300), body: 0, path: whole(0, 120) },
        { body: whole(0, 200) },
      ] as const
    )[i % 3]!;
    const at = { x: between(0, W), y: between(0, D) };
    const kind = next();
    const long = between(200, 4000) * (i % 3 === 0 ? 1 : 0.1);
    const angle = next() < 0.5 ? 0 : between(0, Math.PI);
    const to = { x: at.x + long * Math.cos(angle), y: at.y + long * Math.sin(angle) };
    const size = between(50, 500);
    const corner = ell(at.x, at.y, at.x + size, at.y + size, at.x + size * between(0.2, 0.8), at.y + size * 0.4);
    const triangle = [at, to, { x: at.x - 90, y: at.y + 400 }];
    if (kind < 0.6 && !("body" in clear)) return { shape: { a: at, b: to }, pieces: [[at, to]], clear };
    return kind < 0.8
      ? { shape: triangle, pieces: [triangle], clear }
      : { shape: corner.whole, pieces: corner.pieces, clear };
  });
  return {
    footprint: {
      anchors: lift.anchors,
      plates: lift.plates,
      body: lift.body.whole,
      vehicle: lift.vehicle,
      ...(lift.path ? { path: lift.path } : {}),
    },
    room: {
      outline: notched ? ell(0, 0, W, D, cx, cy).whole : box(0, 0, W, D),
      clear: held,
      ...(free ? { free: ["vehicle"] } : {}),
    },
    obstacles: [...made, ...jambs].map(({ shape, clear }, i) => ({ id: `o${i}`, name: `obstacle ${i}`, shape, clear })),
    turns: [
      { mirror: "as-drawn", angle: 0 },
      { mirror: next() < 0.5 ? "mirrored" : "as-drawn", angle: next() < 0.5 ? Math.PI : between(0, 2 * Math.PI) },
    ],
    parts: {
      anchors: lift.anchors.map((p) => [p]),
      plates: lift.plates,
      body: lift.body.pieces,
      vehicle: [lift.vehicle],
      path: lift.path ? [lift.path] : [],
    },
    barriers: [
      { pieces: outside, clear: held },
      ...[...made, ...jambs].map(({ pieces, clear }) => ({ pieces, clear })),
    ],
  };
};
