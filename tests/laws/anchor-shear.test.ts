/**
 * Shear toward and along an edge, worked by hand from ACI 318-19 17.7.2 beside the whole check: two 5/8 in anchors 8 in
 * apart, 6 in from the edge x = 6 in of a 12-in slab, hef 3.5 in, f'c 3000 psi cracked, so Vb = 6287.285 lb (as in
 * published/anchor-groups) and the body is 9 in deep.
 */
import { type Barrier, checkAnchorGroup } from "@floorworthy/engine/anchors";
import { type Check, isUnable, type Term, toBase } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

const inch = (v: number): number => toBase(v, "in");
const Vb = 6287.285142441889;

const line = (ax: number, ay: number, bx: number, by: number): Barrier => ({
  a: { x: inch(ax), y: inch(ay) },
  b: { x: inch(bx), y: inch(by) },
  kind: "edge",
});
const edge = line(6, -900, 6, 900);

interface Pair {
  readonly s?: number;
  readonly Vx?: readonly [number, number];
  readonly Vy?: number;
  readonly da?: number;
  readonly back?: number;
}

const checks = (
  barriers: readonly Barrier[],
  { s = 8, Vx = [1000, 1000], Vy = 0, da = 0.625, back = 0 }: Pair = {},
) => {
  const result = checkAnchorGroup(
    [0, 1].map((i) => ({
      id: `${i}`,
      x: -i * back,
      y: inch(i * s),
      tension: 0,
      shearX: toBase(Vx[i]!, "lb"),
      shearY: toBase(Vy, "lb"),
    })),
    { kind: "expansion", da: inch(da), hef: inch(3.5) },
    { fc: toBase(3000, "psi"), thickness: inch(12), state: "cracked", supplementary: "none" },
    { barriers },
    "strength-design",
  );
  if (isUnable(result)) throw new Error(result.reason);
  return (id: string): Check | undefined => result.checks.find((c) => c.id === id);
};
const nominal = (check: Check | undefined): Term => check!.capacity.from![1]!;
const near = (actual: number, expected: number): void =>
  expect(Math.abs(actual / expected - 1), `${actual} against ${expected}`).toBeLessThanOrEqual(1e-9);

describe("toward the edge", () => {
  const toward = (barriers: readonly Barrier[], pair?: Pair) => checks(barriers, pair)("anchor-shear-breakout");
  test("far from corners: (9 + 8 + 9) × 9 over 4.5 × 6², φ 0.70, all shear on the row", () => {
    const check = toward([edge]);
    near(nominal(check).value, (234 / 162) * Vb);
    near(check!.capacity.value, 0.7 * (234 / 162) * Vb);
    near(check!.demand.value, 2000);
  });
  test.each([-4, 12])("corner 4 in beyond the end at y = %d in: width 4 + 8 + 9, ψed 0.7 + 0.3 × 4/9", (y) => {
    const check = toward([edge, line(-900, y, 900, y)], { Vx: [1000, 1000] });
    near(nominal(check).value, (189 / 162) * (0.7 + (0.3 * 4) / 9) * Vb);
  });
  test("resultant 2 in from the middle of the row: ψec 1/(1 + 2/9)", () =>
    near(nominal(toward([edge], { Vx: [500, 1500] })).value, (234 / 162 / (1 + 2 / 9)) * Vb));
  test("anchors farther apart than 3 ca1 have two whole bodies, no more", () =>
    near(nominal(toward([edge], { s: 30 })).value, 2 * Vb));
  test("away from the edge nothing is checked", () => expect(toward([edge], { Vx: [-1000, -1000] })).toBeUndefined());
  test("a row is what lies within 5 mm of its nearest anchor", () => {
    expect(toward([edge], { back: 4.95 })?.governs).toMatch(/^anchors 0, 1/);
    expect(toward([edge], { back: 5.05 })?.governs).toMatch(/^anchor 0/);
  });
  test("a side piece counts within √2 × 1.5 ca1 = 12.73 in of an anchor of the row", () => {
    const side = (x: number) => nominal(toward([edge, line(-40, -4, -x, -4)])).value;
    near(side(12), (189 / 162) * (0.7 + (0.3 * 4) / 9) * Vb); // √(12² + 4²) = 12.65
    near(side(12.2), (234 / 162) * Vb); // 12.84
  });
  test("a piece of edge that the body does not meet is not checked: 1.5 ca1 = 9 in beyond the end anchors", () => {
    expect(toward([line(6, 16.9, 6, 40)])).toBeDefined();
    expect(toward([line(6, 17.1, 6, 40)])).toBeUndefined();
    expect(toward([line(6, -40, 6, -8.9)])).toBeDefined();
    expect(toward([line(6, -40, 6, -9.1)])).toBeUndefined();
  });
  test("beyond 60 da = 37.5 in, or 10 hef = 35 in, an edge is not checked (EN 1992-4 7.2.2.5)", () => {
    const far = (x: number, da: number) => toward([line(x, -900, x, 900)], { da });
    expect([far(37.4, 0.625), far(34.9, 0.5)].every((c) => c !== undefined)).toBe(true);
    expect([far(37.6, 0.625), far(35.1, 0.5)]).toEqual([undefined, undefined]);
  });
});

test("along the edge: twice as much, ψed 1 at a corner", () => {
  const along = checks([edge, line(-900, -4, 900, -4)], { Vx: [0, 0], Vy: 700 })("anchor-shear-breakout-along");
  near(nominal(along).value, 2 * (189 / 162) * Vb);
  near(along!.demand.value, 1400);
});

test("an unknown category counts as 3 in tension: φ 0.45, said so", () => {
  const result = checkAnchorGroup(
    [{ id: "A", x: 0, y: 0, tension: 1000, shearX: 0, shearY: 0 }],
    { kind: "expansion", da: 19, hef: inch(4) },
    { fc: toBase(3600, "psi"), thickness: inch(12), state: "cracked", supplementary: "none" },
    { barriers: [] },
    "strength-design",
  );
  if (isUnable(result)) throw new Error(result.reason);
  const { capacity } = result.checks.find(({ id }) => id === "anchor-breakout-single")!;
  near(capacity.value, 0.45 * 17 * 60 * 8);
  expect(capacity.from?.[0]?.basis).toMatch(/category 3/);
});
