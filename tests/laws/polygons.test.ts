/** Laws of the plan's polygons, with polyclip-ts (a general-purpose library) and random points as the other party. */
import {
  clipByHalfPlane,
  distanceToBoundary,
  distanceToPolygon,
  distanceToSegment,
  type Point,
  type Polygon,
  pointInPolygon,
  polygonArea,
  polygonCentroid,
  polygonDistance,
  polygonMoments,
  segmentDistance,
  segmentsMeet,
  signedArea,
  unionArea,
  unionOutline,
} from "@floorworthy/engine/geometry";
import fc from "fast-check";
import { union } from "polyclip-ts";
import { describe, expect, test } from "vitest";

const close = (actual: number, expected: number, tolerance: number): void =>
  expect(Math.abs(actual - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(tolerance);

const point = fc.record({
  x: fc.double({ min: -500, max: 500, noNaN: true }),
  y: fc.double({ min: -500, max: 500, noNaN: true }),
});

/** A convex polygon: corners of a circle at sorted angles, at least a tenth of a radian apart. */
const convex = fc
  .record({
    at: point,
    r: fc.double({ min: 10, max: 300, noNaN: true }),
    steps: fc.array(fc.double({ min: 0.1, max: 1, noNaN: true }), { minLength: 3, maxLength: 9 }),
  })
  .map(({ at, r, steps }): Polygon => {
    const total = steps.reduce((a, b) => a + b, 0);
    let sum = 0;
    return steps.map((step) => {
      sum += step;
      const angle = (2 * Math.PI * sum) / total;
      return { x: at.x + r * Math.cos(angle), y: at.y + r * Math.sin(angle) };
    });
  });

const square = fc.record({ at: point, half: fc.double({ min: 5, max: 150, noNaN: true }) }).map(
  ({ at: { x, y }, half }): Polygon => [
    { x: x - half, y: y - half },
    { x: x + half, y: y - half },
    { x: x + half, y: y + half },
    { x: x - half, y: y + half },
  ],
);

const polyclipArea = (polygons: readonly Polygon[]): number => {
  const rings = polygons.map((p) => [p.map(({ x, y }) => [x, y] as [number, number])]);
  const area = (ring: readonly (readonly [number, number])[]): number =>
    polygonArea(ring.slice(0, -1).map(([x, y]) => ({ x, y })));
  return union(rings[0]!, ...rings.slice(1)).reduce(
    (sum, [outer, ...holes]) => sum + area(outer!) - holes.reduce((s, hole) => s + area(hole), 0),
    0,
  );
};

describe("union of convex polygons", () => {
  test("area agrees with polyclip-ts for squares and for any convex shapes", () => {
    const shapes = fc.oneof(
      fc.array(square, { minLength: 1, maxLength: 8 }),
      fc.array(convex, { minLength: 1, maxLength: 6 }),
    );
    fc.assert(
      fc.property(shapes, (polygons) => {
        const expected = polyclipArea(polygons);
        close(unionArea(polygons), expected, 1e-7 * expected + 1e-6);
      }),
      { numRuns: 150 },
    );
  });

  test("area agrees with squares on a common grid, counted cell by cell", () => {
    const cell = fc.record({
      x: fc.integer({ min: 0, max: 12 }),
      y: fc.integer({ min: 0, max: 12 }),
      n: fc.integer({ min: 1, max: 6 }),
    });
    fc.assert(
      fc.property(fc.array(cell, { minLength: 1, maxLength: 8 }), (squares) => {
        const cells = new Set(
          squares.flatMap(({ x, y, n }) =>
            [...Array(n * n).keys()].map((k) => `${x + (k % n)},${y + Math.floor(k / n)}`),
          ),
        );
        const polygons = squares.map(({ x, y, n }) => [
          { x, y },
          { x: x + n, y },
          { x: x + n, y: y + n },
          { x, y: y + n },
        ]);
        close(unionArea(polygons), cells.size, 1e-9);
      }),
    );
  });

  test("area agrees with 200,000 random points within four standard errors", () => {
    let seed = 12345;
    const random = (): number => {
      seed = (1103515245 * seed + 12345) % 2147483648;
      return seed / 2147483648;
    };
    const shapes = fc.sample(fc.array(convex, { minLength: 4, maxLength: 4 }), { seed: 7, numRuns: 3 });
    for (const polygons of shapes) {
      let hits = 0;
      const n = 200_000;
      for (let i = 0; i < n; i++) {
        const p = { x: 1600 * (random() - 0.5), y: 1600 * (random() - 0.5) };
        if (polygons.some((polygon) => pointInPolygon(p, polygon) !== "outside")) hits++;
      }
      const share = unionArea(polygons) / 1600 ** 2;
      close(hits / n, share, 4 * Math.sqrt((share * (1 - share)) / n));
    }
  });

  test("the drawn outline has the same area, to its grid of 0.0001 mm", () => {
    fc.assert(
      fc.property(fc.array(convex, { minLength: 1, maxLength: 6 }), (polygons) => {
        const drawn = unionOutline(polygons).reduce((sum, ring) => sum + signedArea(ring), 0);
        close(drawn, unionArea(polygons), 5);
      }),
    );
  });

  test("outline does not depend on which way the parts run, and nothing has no outline", () => {
    const one = [{ x: 0, y: 0 }, { x: 2, y: 0 }, { x: 2, y: 2 }, { x: 0, y: 2 }]; // biome-ignore format: one square
    const outline = unionOutline([one, one.toReversed()]);
    expect(outline.map(signedArea)).toEqual([4]);
    expect([unionOutline([[]]), unionArea([[]]), unionArea([])]).toEqual([[], 0, 0]);
  });
});

describe("half-plane", () => {
  test("what is kept and what is cut off add up, in area and first moment", () => {
    fc.assert(
      fc.property(
        convex,
        fc.double({ min: 0, max: 6.3, noNaN: true }),
        fc.double({ min: -400, max: 400, noNaN: true }),
        (p, angle, c) => {
          const [nx, ny] = [Math.cos(angle), Math.sin(angle)];
          const kept = polygonMoments(clipByHalfPlane(p, { nx, ny, c }));
          const cut = polygonMoments(clipByHalfPlane(p, { nx: -nx, ny: -ny, c: -c }));
          const whole = polygonMoments(p);
          close(kept.area + cut.area, whole.area, 1e-9 * whole.area);
          close(kept.area * kept.x + cut.area * cut.x, whole.area * whole.x, 1e-6 * whole.area);
        },
      ),
    );
  });
});

describe("moments", () => {
  test("rectangle b × h: b h³/12, wherever it stands and whichever way it runs", () => {
    const rectangle = (x: number, y: number): Polygon => [
      { x, y },
      { x: x + 6, y },
      { x: x + 6, y: y + 4 },
      { x, y: y + 4 },
    ];
    for (const p of [rectangle(0, 0), rectangle(1e5, -1e5), rectangle(3, 7).toReversed()]) {
      const { area, Ixx, Iyy, Ixy } = polygonMoments(p);
      close(area, 24, 1e-9);
      close(Ixx, (6 * 4 ** 3) / 12, 1e-6);
      close(Iyy, (4 * 6 ** 3) / 12, 1e-6);
      close(Ixy, 0, 1e-6);
    }
  });
  test("right triangle b × h: b h³/36, b² h²/72 negative with the right angle at the origin (any handbook)", () => {
    const { Ixx, Ixy } = polygonMoments([{ x: 0, y: 0 }, { x: 6, y: 0 }, { x: 0, y: 4 }]); // biome-ignore format: a triangle
    close(Ixx, (6 * 4 ** 3) / 36, 1e-9);
    close(Ixy, -(6 ** 2 * 4 ** 2) / 72, 1e-9);
  });
  test("turning keeps area and Ixx + Iyy; the centroid turns along", () => {
    fc.assert(
      fc.property(convex, fc.double({ min: 0, max: 6.3, noNaN: true }), (p, angle) => {
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const turn = ({ x, y }: Point): Point => ({ x: c * x - s * y, y: s * x + c * y });
        const [before, after] = [polygonMoments(p), polygonMoments(p.map(turn))];
        close(after.area, before.area, 1e-9 * before.area);
        close(after.Ixx + after.Iyy, before.Ixx + before.Iyy, 1e-6 * (before.Ixx + before.Iyy));
        const [was, is] = [turn(polygonCentroid(p)), polygonCentroid(p.map(turn))];
        close(Math.hypot(was.x - is.x, was.y - is.y), 0, 1e-6);
      }),
    );
  });
  test("a line has no area and its middle for a centroid", () =>
    expect(polygonCentroid([{ x: 0, y: 0 }, { x: 4, y: 2 }])).toEqual({ x: 2, y: 1 })); // biome-ignore format: a line
});

describe("inside, on, outside, distance", () => {
  const L: Polygon = [[0, 0], [4, 0], [4, 1], [1, 1], [1, 3], [0, 3]].map(([x, y]) => ({ x: x!, y: y! })); // biome-ignore format: an L
  test("an L: inside, in its bay, on a side, on a corner", () => {
    const at = (x: number, y: number) => pointInPolygon({ x, y }, L);
    expect([at(0.5, 2), at(2, 2), at(1, 2), at(1, 1), at(3, 1), at(-1, 1), at(0.5, 1)]).toEqual([
      "inside", "outside", "on", "on", "on", "outside", "inside",
    ]); // biome-ignore format: a list
  });
  test("distances: to the L's sides from its bay and from within; between polygons; 0 where they overlap", () => {
    expect(distanceToPolygon({ x: 2, y: 2 }, L)).toBe(1);
    expect(distanceToPolygon({ x: 0.5, y: 2 }, L)).toBe(0);
    expect(distanceToBoundary({ x: 0.5, y: 2 }, L)).toBe(0.5);
    const moved = (dx: number, dy: number): Polygon => L.map(({ x, y }) => ({ x: x + dx, y: y + dy }));
    expect(polygonDistance(L, moved(1.5, 1.5))).toBe(0.5);
    expect(polygonDistance(L, moved(7, 4))).toBe(Math.hypot(3, 3));
    expect([polygonDistance(L, moved(0.5, 0.5)), polygonDistance(L, moved(4, 0))]).toEqual([0, 0]);
  });
  test("distance to a segment is the least over its points", () => {
    fc.assert(
      fc.property(point, point, point, (p, a, b) => {
        const steps = [...Array(401).keys()].map((i) => i / 400);
        const least = Math.min(
          ...steps.map((t) => Math.hypot(a.x + t * (b.x - a.x) - p.x, a.y + t * (b.y - a.y) - p.y)),
        );
        const d = distanceToSegment(p, { a, b });
        expect(d).toBeLessThanOrEqual(least + 1e-9);
        expect(least - d).toBeLessThanOrEqual(Math.hypot(b.x - a.x, b.y - a.y) / 400);
      }),
    );
  });
  test("segments that meet have no distance, and the other way round", () => {
    fc.assert(
      fc.property(point, point, point, point, (a, b, c, d) => {
        expect(segmentDistance({ a, b }, { a: c, b: d }) === 0).toBe(segmentsMeet({ a, b }, { a: c, b: d }));
        expect(segmentsMeet({ a, b }, { a: b, b: c })).toBe(true);
      }),
    );
  });
});
