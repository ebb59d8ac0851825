/**
 * Where a lift may stand, against brute force: the same bays judged point by point with nothing but distances of convex
 * shapes (separating axes; corner to side), which share no line with the sums and offsets under test.
 */
import { distanceToBoundary, type Point, type Polygon, pointInPolygon, sides } from "@floorworthy/engine/geometry";
import { createGenerator } from "@floorworthy/engine/numerics";
import {
  blockedBy,
  closedWindows,
  deepestPlace,
  feasiblePositions,
  type LiftFootprint,
  type Placement,
  type Region,
  slackAt,
  smallestMove,
  type Turn,
  windowThrough,
} from "@floorworthy/engine/placement";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";
import { type Bay, randomBay, slack } from "./placement-bays.ts";

const BAYS = 500;
const TOLERANCE = 0.1;
/** rounded corners, growth against the grid and the grid itself, mm */
const SAFE_SIDE = TOLERANCE + 0.01;

const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};
const solve = ({ footprint, room, obstacles, turns }: Bay): readonly Placement[] =>
  able(feasiblePositions(footprint, room, obstacles, turns, TOLERANCE));
const rings = ({ outline, holes }: Region): readonly Polygon[] => [outline, ...holes];
const feasible = (p: Point, { regions }: Placement): boolean =>
  regions.some(
    ({ outline, holes }) =>
      pointInPolygon(p, outline) !== "outside" && holes.every((hole) => pointInPolygon(p, hole) !== "inside"),
  );
const bays = Array.from({ length: BAYS }, (_, i) => randomBay(createGenerator(i + 1)));
const solved = bays.map(solve);

/** A grid over the room and a little beyond it on all sides; each bay's is shifted, so that together they are fine. */
const gridOf = (step: number, bay: number): readonly Point[] => {
  const n = Math.ceil(7600 / step);
  const [dx, dy] = [(bay * 37) % step, (bay * 53) % step];
  return Array.from({ length: n * n }, (_, i) => ({
    x: dx - 300 + step * (i % n),
    y: dy - 300 + step * Math.floor(i / n),
  }));
};
const SIDES = 16;
/** Points on, just within and just beyond some sides of the regions, where a mistake would show first. */
const besideSides = ({ regions }: Placement): readonly Point[] => {
  const all = regions.flatMap(rings).flatMap(sides);
  const some = all.filter((_, i) => i % Math.ceil(all.length / SIDES) === 0);
  return some.flatMap(({ a, b }) => {
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const [nx, ny] = [(b.y - a.y) / length, (a.x - b.x) / length];
    return [0, 0.2, -0.2].map((d) => ({ x: (a.x + b.x) / 2 + d * nx, y: (a.y + b.y) / 2 + d * ny }));
  });
};

describe(`brute force on ${BAYS} random bays`, () => {
  test("a position inside the regions keeps every distance; one outside misses one, up to the stated tolerance", () => {
    let [inside, outside] = [0, 0];
    bays.forEach((bay, i) => {
      bay.turns.forEach((turn, t) => {
        const placement = solved[i]![t]!;
        for (const p of [...(t === 0 ? gridOf(517, i) : []), ...besideSides(placement)]) {
          const called = feasible(p, placement);
          const s = slack(bay, turn, p, called ? Number.NEGATIVE_INFINITY : 0);
          if (called) {
            inside++;
            if (!(s >= 0)) throw new Error(`bay ${i} turn ${t}: called feasible at ${p.x}, ${p.y}, short by ${-s}`);
          } else {
            outside++;
            if (s > SAFE_SIDE) throw new Error(`bay ${i} turn ${t}: ${p.x}, ${p.y} is free by ${s} but not offered`);
          }
        }
      });
    });
    expect(inside).toBeGreaterThan(10_000); // the bays are neither all open nor all closed
    expect(outside).toBeGreaterThan(10_000);
  });

  test("what blocks a position is what brute force finds short there", () => {
    bays.slice(0, 100).forEach((bay, i) => {
      const placement = solved[i]![0]!;
      for (const p of gridOf(977, i)) {
        const s = slack(bay, bay.turns[0]!, p, Number.NEGATIVE_INFINITY);
        if (Math.abs(s) > 0.01) expect(blockedBy(placement, p).length > 0).toBe(s < 0);
      }
    });
  });

  test("no position of the grid that brute force allows is nearer than the smallest move", () => {
    let moved = 0;
    bays.forEach((bay, i) => {
      const wanted = { x: 2000 + ((i * 137) % 2500), y: 2000 + ((i * 211) % 2500) };
      const move = smallestMove(wanted, solved[i]!);
      const reach = isUnable(move) ? Number.POSITIVE_INFINITY : move.distance;
      if (!isUnable(move)) {
        expect(slack(bay, move.turn, move.to, Number.NEGATIVE_INFINITY)).toBeGreaterThanOrEqual(-0.003);
        if (move.distance > 0) moved++;
      }
      const circle = Array.from({ length: 48 }, (_, k) => {
        const r = (reach - 0.5) * (k % 2 === 0 ? 1 : 0.6);
        return { x: wanted.x + r * Math.cos((k * Math.PI) / 24), y: wanted.y + r * Math.sin((k * Math.PI) / 24) };
      });
      const grid = gridOf(617, i);
      const nearer = (reach > 1 && reach < 1e6 ? [...grid, ...circle] : grid).filter(
        (p) => Math.hypot(p.x - wanted.x, p.y - wanted.y) < reach - 0.25,
      );
      for (const turn of bay.turns)
        for (const p of nearer) expect(slack(bay, turn, p, 0)).toBeLessThanOrEqual(SAFE_SIDE);
    });
    expect(moved).toBeGreaterThan(100);
  });

  test("a closed window is free of what blocks the wanted place and blocked by something else", () => {
    let closed = 0;
    solved.forEach(([first], i) => {
      const placement = first!;
      const wanted = { x: 2000 + ((i * 137) % 2500), y: 2000 + ((i * 211) % 2500) };
      const inTheWay = new Set(blockedBy(placement, wanted).map(({ id, part }) => id + part));
      for (const { at, blocks } of closedWindows(wanted, placement)) {
        closed++;
        expect(blocks.length).toBeGreaterThan(0);
        expect(blocks.filter(({ id, part }) => inTheWay.has(id + part))).toEqual([]);
        expect(feasible(at, placement)).toBe(false);
      }
    });
    expect(closed).toBeGreaterThan(10);
  });
});

describe("laws", () => {
  const area = (placement: Placement): number =>
    placement.regions.flatMap(rings).reduce((sum, ring) => sum + twiceArea(ring) / 2, 0);
  const twiceArea = (ring: Polygon): number => sides(ring).reduce((s, { a, b }) => s + a.x * b.y - b.x * a.y, 0);
  const moveShapes = (bay: Bay, f: (p: Point) => Point, sheet: LiftFootprint = bay.footprint): Bay => ({
    ...bay,
    footprint: sheet,
    room: { ...bay.room, outline: bay.room.outline.map(f) },
    obstacles: bay.obstacles.map((o) => ({
      ...o,
      shape: "a" in o.shape ? { a: f(o.shape.a), b: f(o.shape.b) } : o.shape.map(f),
    })),
  });
  const sameRegions = (p: Placement, q: Placement, f: (p: Point) => Point): void => {
    expect(q.regions).toHaveLength(p.regions.length);
    expect(Math.abs(area(p) - area(q))).toBeLessThan(20);
    const corners = p.regions.flatMap(rings).flat().map(f);
    for (const c of corners) {
      const away = Math.min(...q.regions.flatMap(rings).map((ring) => distanceToBoundary(c, ring)));
      expect(away).toBeLessThan(0.02);
    }
  };

  test("a bay moved as a whole moves its regions", () => {
    const f = (p: Point): Point => ({ x: p.x + 1234.567, y: p.y - 765.432 });
    bays.slice(0, 25).forEach((bay, i) => {
      sameRegions(solved[i]![0]!, solve(moveShapes(bay, f))[0]!, f);
    });
  });

  test("a mirrored bay with a mirrored lift has mirrored regions", () => {
    const f = (p: Point): Point => ({ x: -p.x, y: p.y });
    const mirrored = (turn: Turn): Turn => ({
      mirror: turn.mirror === "mirrored" ? "as-drawn" : "mirrored",
      angle: -turn.angle,
    });
    bays.slice(0, 25).forEach((bay, i) => {
      const image = solve({ ...moveShapes(bay, f), turns: bay.turns.map(mirrored) });
      bay.turns.forEach((_, t) => {
        sameRegions(solved[i]![t]!, image[t]!, f);
      });
    });
  });

  // Steiner's formula for parallel bodies, area(P ⊕ disc r) = A + L·r + π·r² for convex P (from memory)
  test("what one anchor loses to a convex obstacle has the area of Steiner's formula", () => {
    const [a, b, c] = [
      { x: 2000, y: 2000 },
      { x: 2400, y: 2000 },
      { x: 2000, y: 2300 },
    ] as const; // a 3-4-5 triangle of 300, 400, 500 mm
    for (const r of [0, 50, 150, 700]) {
      const footprint = {
        anchors: [{ x: 0, y: 0 }],
        plates: [],
        body: [a, b, c].map(({ x, y }) => ({ x: x - 2100, y: y - 2100 })),
      };
      const outline = [
        [0, 0],
        [5000, 0],
        [5000, 5000],
        [0, 5000],
      ].map(([x, y]) => ({ x: x!, y: y! }));
      const drain = { id: "drain", name: "drain", shape: [a, b, c], clear: { anchors: r } };
      const [placement] = able(
        feasiblePositions(footprint, { outline, clear: {} }, [drain], bays[0]!.turns, TOLERANCE),
      );
      const lost = placement!.regions[0]!.holes.reduce((sum, ring) => sum - twiceArea(ring) / 2, 0);
      const steiner = 60_000 + 1200 * r + Math.PI * r * r;
      expect(lost).toBeGreaterThanOrEqual(steiner);
      expect(lost - steiner).toBeLessThan(SAFE_SIDE * (1200 + 2 * Math.PI * r));
    }
  });

  test("another obstacle or more distance never opens a place; a finer tolerance never closes one", () => {
    bays.slice(0, 25).forEach((bay, i) => {
      const wider = bay.obstacles.map((o) => ({
        ...o,
        clear: Object.fromEntries(Object.entries(o.clear).map(([part, v]) => [part, v + 25])),
      }));
      const all = area(solved[i]![0]!);
      expect(area(solve({ ...bay, obstacles: bay.obstacles.slice(1) })[0]!)).toBeGreaterThanOrEqual(all - 1);
      expect(area(solve({ ...bay, obstacles: wider })[0]!)).toBeLessThanOrEqual(all + 1);
      const finer = able(feasiblePositions(bay.footprint, bay.room, bay.obstacles, bay.turns, TOLERANCE / 10));
      expect(area(finer[0]!)).toBeGreaterThanOrEqual(all - 1);
    });
  });
});

describe("windows and the place with most room", () => {
  const inside = (p: Point, placement: Placement): boolean => feasible(p, placement);

  test("a window's ends are feasible just within and blocked just beyond, and named", () => {
    let ends = 0;
    bays.slice(0, 100).forEach((_, i) => {
      const placement = solved[i]![0]!;
      const region = placement.regions[0];
      const at = region && deepestPlace(region)?.at;
      if (!at) return;
      for (const way of [
        { x: 1, y: 0 },
        { x: 0, y: 1 },
        { x: 0.6, y: 0.8 },
      ]) {
        const window = windowThrough(placement, at, way)!;
        const on = (t: number): Point => ({ x: at.x + t * way.x, y: at.y + t * way.y });
        for (const [t, beyond] of [
          [window.from, -0.4],
          [window.to, 0.4],
        ] as const) {
          ends++;
          expect(inside(on(t - beyond / 4), placement) || window.to - window.from < 0.3).toBe(true);
          expect(inside(on(t + beyond), placement)).toBe(false);
        }
        expect(window.heldBackBy.length).toBeGreaterThan(0);
        expect(window.heldOnBy.length).toBeGreaterThan(0);
      }
    });
    expect(ends).toBeGreaterThan(150);
  });

  test("no point of a grid over the region has more room than the deepest place, by its precision", () => {
    solved.slice(0, 60).forEach(([placement], i) => {
      for (const region of placement!.regions) {
        const deepest = deepestPlace(region, 1)!;
        const room = (p: Point): number => Math.min(...rings(region).map((ring) => distanceToBoundary(p, ring)));
        expect(feasible(deepest.at, { ...placement!, regions: [region] })).toBe(true);
        expect(Math.abs(room(deepest.at) - deepest.room)).toBeLessThan(1e-6);
        for (const p of gridOf(211, i))
          if (feasible(p, { ...placement!, regions: [region] }))
            expect(room(p)).toBeLessThanOrEqual(deepest.room + 1 + 0.02 * 9000);
      }
    });
  });

  test("the deepest place of a 3-4-5 triangle is its incentre, of a long strip the middle of its width nearest by", () => {
    const triangle = [
      { x: 0, y: 0 },
      { x: 400, y: 0 },
      { x: 0, y: 300 },
    ];
    const incentre = deepestPlace({ outline: triangle, holes: [] }, 0.001)!; // inradius (a + b − c) / 2 = 100
    expect(incentre.room).toBeCloseTo(100, 2);
    expect(Math.hypot(incentre.at.x - 100, incentre.at.y - 100)).toBeLessThan(0.1);
    const strip = [
      { x: 0, y: 0 },
      { x: 9000, y: 0 },
      { x: 9000, y: 100 },
      { x: 0, y: 100 },
    ];
    const near = deepestPlace({ outline: strip, holes: [] }, 0.1, { x: 7000, y: -500 })!;
    expect(near.room).toBeGreaterThan(49.8);
    expect(Math.abs(near.at.x - 7000)).toBeLessThan(30);
  });

  test("slack is what brute force finds", () => {
    bays.slice(0, 60).forEach((bay, i) => {
      const placement = solved[i]![0]!;
      for (const p of gridOf(1303, i)) {
        const least = slackAt(placement, p);
        const s = slack(bay, bay.turns[0]!, p, Number.NEGATIVE_INFINITY);
        if (s > 0) expect(Math.abs(least - s)).toBeLessThan(0.01);
        else expect(least < 0.01 || !insideRoomAt(placement, p)).toBe(true);
      }
    });
  });

  const insideRoomAt = (placement: Placement, p: Point): boolean =>
    !blockedBy(placement, p).some(({ id }) => id === "room");
});

describe("what cannot be answered is said", () => {
  const bay = bays[0]!;
  const reason = (change: Partial<Bay>): string => {
    const { footprint, room, obstacles, turns } = { ...bay, ...change };
    const answer = feasiblePositions(footprint, room, obstacles, turns);
    return isUnable(answer) ? answer.reason : "answered";
  };

  test("no area, no number, a negative clearance", () => {
    expect(reason({})).toBe("answered");
    expect(reason({ room: { ...bay.room, outline: bay.room.outline.slice(0, 2) } })).toContain("room has no area");
    expect(reason({ footprint: { ...bay.footprint, body: [] } })).toContain("has no area");
    expect(reason({ turns: [{ mirror: "as-drawn", angle: Number.NaN }] })).toContain("not a number");
    const pipe = { id: "pipe", name: "the water pipe", shape: { a: { x: 0, y: 0 }, b: { x: 1, y: 1 } } };
    expect(reason({ obstacles: [{ ...pipe, clear: { anchors: -1 } }] })).toContain("the water pipe");
    expect(reason({ obstacles: [{ ...pipe, shape: [], clear: {} }] })).toContain("no shape");
  });

  test("a lift larger than the room fits nowhere, and the answer is finite", () => {
    const big = bay.footprint.body.map(({ x, y }) => ({ x: 20 * x, y: 20 * y }));
    const placements = able(feasiblePositions({ ...bay.footprint, body: big }, bay.room, bay.obstacles, bay.turns));
    expect(placements.flatMap(({ regions }) => regions)).toEqual([]);
    const answer = smallestMove({ x: 3000, y: 3000 }, placements);
    expect(isUnable(answer) && answer.reason).toContain("fits nowhere");
    for (const { distance } of blockedBy(placements[0]!, { x: 3000, y: 3000 }))
      expect(Number.isFinite(distance)).toBe(true);
  });
});
