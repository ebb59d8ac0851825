/**
 * Observed rates of the plate solver against theory: cubic splines for a fourth-order equation give deflections of order
 * s⁴ (Strang G. & Fix G.J., An Analysis of the Finite Element Method, 1973, ch. 3) and second derivatives of order s², except
 * at the points from which the moments are taken here, where the order is higher (Barlow, IJNME 10, 1976).
 */
import { describe, expect, test } from "vitest";
import { circle, corners, lengthOf, plainFloor, rigidityOf, solveOne, spread, square } from "../plates/setups.ts";

const rates = (errors: readonly number[]): number[] =>
  errors.slice(1).map((e, i) => Math.log2(Math.abs(errors[i]! / e)));

describe("simply supported square, uniform load, against the Lévy series", () => {
  // Timoshenko & Woinowsky-Krieger, Art. 30, eq. (139) for the deflection; the moment from its second derivatives
  const nu = 0.3;
  const series = (): { w: number; M: number } => {
    let [w, xx, yy] = [0, 0, 0];
    for (let m = 1, sign = 1; m < 4000; m += 2, sign = -sign) {
      const alpha = (m * Math.PI) / 2;
      const cosh = alpha < 300 ? Math.cosh(alpha) : Number.POSITIVE_INFINITY;
      const shape = 1 - (alpha * Math.tanh(alpha) + 2) / (2 * cosh);
      w += ((4 / Math.PI ** 5) * sign * shape) / m ** 5;
      xx -= ((4 / Math.PI ** 3) * sign * shape) / m ** 3;
      yy += ((4 / Math.PI ** 3) * sign * (shape - 1 + 1 / cosh)) / m ** 3;
    }
    return { w, M: -(xx + nu * yy) };
  };
  const exact = series();
  test("the series itself: 0.00406235 and 0.0478864 (Batista 2010)", () => {
    expect(exact.w).toBeCloseTo(0.00406235, 8);
    expect(exact.M).toBeCloseTo(0.0478864, 7);
  });
  const a = 1000;
  const outline = { x0: 0, x1: a, y0: 0, y1: a };
  const floor = plainFloor(outline, { nu, k: 0, edges: { x0: "simple", x1: "simple", y0: "simple", y1: "simple" } });
  const errors = [2, 4, 8, 16].map((n) => {
    const r = solveOne(floor, [{ kind: "pressure", polygon: corners(outline), p0: 1, px: 0, py: 0 }], {
      fineness: 1.2 * n,
    });
    const middle = { x: a / 2, y: a / 2 };
    return {
      w: (r.deflectionAt(middle) * rigidityOf(floor)) / a ** 4 - exact.w,
      M: r.momentsAt(middle).Mx / a ** 2 - exact.M,
    };
  });
  test("deflection: fourth order", () => {
    for (const rate of rates(errors.map((e) => e.w))) expect(rate).toBeGreaterThan(3.8);
  });
  test("moment: better than third order", () => {
    for (const rate of rates(errors.slice(0, 3).map((e) => e.M))) expect(rate).toBeGreaterThan(3);
  });
});

test("disc on an infinite slab, a/l = 0.2: 0.3 % at the usual fineness, then better than second order to 0.005 %", () => {
  const l = lengthOf(plainFloor(square(1)));
  const M = 0.20400945087098374;
  const errors = [1, 2, 4].map((fineness) => {
    const r = solveOne(plainFloor(square(9 * l)), [spread(circle(0.2 * l), 1)], { focus: [square(0.2 * l)], fineness });
    return r.momentsAt({ x: 0, y: 0 }).Mx / M - 1;
  });
  expect(Math.abs(errors[0]!)).toBeLessThan(3e-3);
  expect(Math.abs(errors[1]!)).toBeLessThan(2e-4);
  expect(Math.abs(errors[2]!)).toBeLessThan(5e-5);
});

test("jump of thickness: deflection settles; the moment h away from the edge is within 3 % at the usual fineness", () => {
  const floor = plainFloor(square(2500), { zones: [{ rect: square(500), thickness: 250 }] });
  const steps = [1, 2, 4].map((fineness) =>
    solveOne(floor, [spread(corners(square(200)), 1)], { focus: [square(200)], fineness }),
  );
  const [one, two, four] = steps.map((r) => ({
    w: r.deflectionAt({ x: 0, y: 0 }),
    M: r.governing.thinSideOfPadEdge!.value,
  }));
  expect(Math.abs(one!.w / four!.w - 1)).toBeLessThan(2e-3);
  expect(Math.abs(two!.w - four!.w)).toBeLessThan(Math.abs(one!.w - four!.w) / 3);
  expect(Math.abs(one!.M / four!.M - 1)).toBeLessThan(0.03);
  expect(Math.abs(two!.M / four!.M - 1)).toBeLessThan(0.01);
});

describe("ground that only pushes under a plate stiff enough to be rigid", () => {
  // q_max B L / P of a rigid rectangle, no tension: exact polygon solution, confirmed by 600 × 600 fibres (same problem as
  // Teng 1962). Given to 1e-5; part contact is decided at Gauss points here, so the plate must come near, and nearer when finer.
  const B = 1000;
  const rigid = plainFloor({ x0: 0, x1: B, y0: 0, y1: B }, { E: 1e9, thickness: 300, k: 0.05 });
  const at = (ex: number, ey: number, fineness: number): number =>
    (solveOne(rigid, [{ kind: "point", x: B * (0.5 + ex), y: B * (0.5 + ey), P: 1000 }], {
      support: "pushes-only",
      fineness,
      pointForces: "sharp",
    }).groundPressureAt({ x: B, y: B }) *
      B *
      B) /
    1000;
  test.each([
    [0.1, 0.1, 2.2045336386442207],
    [0.2, 0.2, 4.137286107350887],
    [0.25, 0.25, 6],
    [0.3, 0.1, 4.492055434643124],
    [0.3, 0, 3.3333333333331314],
  ])("ex/B = %d, ey/L = %d: %d", (ex, ey, expected) => {
    const [coarse, fine] = [20, 200].map((fineness) => Math.abs(at(ex, ey, fineness) / expected - 1));
    expect(coarse!).toBeLessThan(1e-2);
    expect(fine!).toBeLessThan(5e-4);
  });
  test("in full contact there is no such error: 9 ft footing, P = 30 k, M = 39 ft·k, 6.22 and 0.44 ksf (McCormac & Brown Ex. 12.8)", () => {
    const [foot, kip] = [304.8, 4448.2216152605];
    const strip = plainFloor({ x0: 0, x1: 9 * foot, y0: 0, y1: foot }, { E: 1e9, nu: 0, thickness: 600, k: 0.05 });
    const e = 39 / 30;
    const r = solveOne(strip, [{ kind: "point", x: (4.5 + e) * foot, y: foot / 2, P: 30 * kip }], {
      support: "pushes-only",
      pointForces: "sharp",
    });
    const ksf = kip / foot ** 2;
    expect(Math.abs(r.groundPressureAt({ x: 9 * foot, y: foot / 2 }) / ksf / 6.22 - 1)).toBeLessThan(
      0.0008038585209003216,
    );
    expect(Math.abs(r.groundPressureAt({ x: 0, y: foot / 2 }) / ksf / 0.44 - 1)).toBeLessThan(0.02);
  });
});
