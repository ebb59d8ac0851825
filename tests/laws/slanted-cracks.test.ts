/**
 * A crack aslant is the same crack: the floor turned by 10 to 45° against its grid gives what the grid along the crack
 * gives. Stated band for the governing (averaged) stress, ground pressure and deflection: within 1.5 %, never more than
 * 1 % on the unsafe side.
 */
import { clipByHalfPlane, type Point, type Polygon } from "@floorworthy/engine/geometry";
import {
  type Floor,
  type FloorLoad,
  type FloorResult,
  relativeStiffness,
  solveFloor,
} from "@floorworthy/engine/plates";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { corners, plainFloor, spread, square } from "../plates/setups.ts";

const box = square(4500);
const slab = plainFloor(box, { thickness: 125, unitWeight: 23.56e-6 });
const turned = (p: Point, a: number): Point => ({
  x: p.x * Math.cos(a) - p.y * Math.sin(a),
  y: p.x * Math.sin(a) + p.y * Math.cos(a),
});
const boxOf = (points: readonly Point[]) => ({
  x0: Math.min(...points.map((p) => p.x)),
  x1: Math.max(...points.map((p) => p.x)),
  y0: Math.min(...points.map((p) => p.y)),
  y1: Math.max(...points.map((p) => p.y)),
});
const answer = (floor: Floor, load: FloorLoad & { kind: "pressure" }, more: readonly FloorLoad[] = []): FloorResult => {
  const found = solveFloor(floor, [{ name: "one", loads: [load, ...more] }], {
    support: "pushes-only",
    focus: [boxOf(load.polygon)],
  });
  if ("unable" in found) throw new Error(found.reason);
  return found[0]!;
};
/** The slab on the far side of an open crack through the origin at an angle, and the same with the grid along it. */
const beyond = (angle: number): Polygon => {
  const n = turned({ x: -1, y: 0 }, angle);
  return clipByHalfPlane(corners(box), { nx: n.x, ny: n.y, c: 0 });
};
const straight: Floor = { ...slab, outline: { ...box, x0: 0 } };
const plate = (d: number) => corners({ x0: d, x1: d + 250, y0: -230, y1: 230 });

describe.each([2, 60, 250, 700, 1500])("a base plate %i mm from the crack", (d) => {
  const reference = answer(straight, spread(plate(d), 30_000) as never).governing;
  test.each([10, 20, 30, 45])("turned by %i°", (degrees) => {
    const a = (degrees * Math.PI) / 180;
    const polygon = plate(d).map((p) => turned(p, a));
    const g = answer({ ...slab, within: beyond(a) }, spread(polygon, 30_000) as never).governing;
    for (const key of ["stressBottomAveraged", "groundPressure", "deflection"] as const) {
      const ratio = g[key].value / reference[key].value;
      expect(ratio, `${key} ${ratio}`).toBeGreaterThan(0.99);
      expect(ratio, `${key} ${ratio}`).toBeLessThan(1.015);
    }
    const top = g.stressTopAveraged.value / reference.stressTopAveraged.value;
    expect(Math.abs(top - 1)).toBeLessThan(0.03);
  });
});

test("a pressed toe and a pull behind it, at random places and angles", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.17, max: Math.PI / 4, noNaN: true }),
      fc.double({ min: 5, max: 900, noNaN: true }),
      fc.double({ min: 0, max: 0.6, noNaN: true }),
      (a, d, pull) => {
        const loads = (angle: number): [FloorLoad & { kind: "pressure" }, FloorLoad] => {
          const at = turned({ x: d + 420, y: 0 }, angle);
          const polygon = plate(d).map((p) => turned(p, angle));
          return [spread(polygon, 30_000) as never, { kind: "point", ...at, P: -pull * 30_000 }];
        };
        const [p0, q0] = loads(0);
        const [p1, q1] = loads(a);
        const reference = answer(straight, p0, [q0]).governing.stressBottomAveraged.value;
        const ratio = answer({ ...slab, within: beyond(a) }, p1, [q1]).governing.stressBottomAveraged.value / reference;
        expect(ratio).toBeGreaterThan(0.985);
        expect(ratio).toBeLessThan(1.02);
      },
    ),
    { numRuns: 25 },
  );
});

test("halving every span changes the answer by less than half a per cent: it has converged", () => {
  const a = 0.4;
  const polygon = plate(40).map((p) => turned(p, a));
  const stress = (fineness: number): number => {
    const found = solveFloor({ ...slab, within: beyond(a) }, [{ name: "one", loads: [spread(polygon, 30_000)] }], {
      support: "pushes-only",
      focus: [boxOf(polygon)],
      fineness,
    });
    if ("unable" in found) throw new Error(found.reason);
    return found[0]!.governing.stressBottomAveraged.value;
  };
  expect(Math.abs(stress(1) / stress(2) - 1)).toBeLessThan(0.005);
});

test("mirrored about the diagonal it is its own mirror image", () => {
  const a = 0.3;
  const polygon = plate(100).map((p) => turned(p, a));
  const flip = (p: Point): Point => ({ x: p.y, y: p.x });
  const one = answer({ ...slab, within: beyond(a) }, spread(polygon, 30_000) as never);
  const other = answer(
    { ...slab, within: beyond(a).map(flip).toReversed() },
    spread(polygon.map(flip).toReversed(), 30_000) as never,
  );
  for (const p of [polygon[0]!, turned({ x: 5, y: 10 }, a), turned({ x: 900, y: -300 }, a)]) {
    expect(other.deflectionAt(flip(p)) / one.deflectionAt(p)).toBeCloseTo(1, 6);
    expect(other.momentsAt(flip(p)).Mx / one.momentsAt(p).My).toBeCloseTo(1, 4);
  }
});

test("a piece that fills its outline is the outline's own answer", () => {
  const load = spread(plate(300), 20_000) as never;
  const whole = answer(slab, load).governing;
  const piece = answer({ ...slab, within: corners(box) }, load).governing;
  expect(piece.stressBottomAveraged.value / whole.stressBottomAveraged.value).toBeCloseTo(1, 9);
});

test("what cannot be a piece of slab is refused, and a load beyond the crack too", () => {
  const bent = [...corners(square(1000)).slice(0, 3), { x: 200, y: 200 }, { x: -1000, y: 1000 }];
  const options = { support: "pushes-only", focus: [] } as const;
  expect(solveFloor({ ...slab, within: bent }, [], options)).toMatchObject({ unable: expect.anything() });
  const off = solveFloor(
    { ...slab, within: beyond(0.5) },
    [{ name: "off", loads: [spread(corners(square(200, -600, 0)), 1000)] }],
    options,
  );
  expect(off).toMatchObject({ reason: expect.stringContaining("beyond the edge") });
});

test("l of this slab is where the distances above were chosen for", () =>
  expect(relativeStiffness(slab.E, slab.nu, slab.thickness, slab.k)).toBeCloseTo(645, 0));
