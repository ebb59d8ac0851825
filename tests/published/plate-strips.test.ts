/**
 * The plate solver as a beam: a strip with ν = 0, loaded by a line across it. A knot line without a jump of thickness
 * (a zone of the same thickness) stands under the line load, where the moment has a kink.
 *
 * - Hetényi M., Beams on Elastic Foundation (1946), Table I and ch. II (from memory; reproduced by calculation).
 * - Boresi A.P. & Schmidt R.J., Advanced Mechanics of Materials, 6th ed. (2003), Examples 10.1, 10.2 (from memory; reproduced).
 * - Weitsman Y., On foundations that react in compression only, J. Appl. Mech. 37 (1970): contact length π/λ (from
 *   memory; deflection and moment of the equal finite free beam, confirmed by a second calculation).
 * - Ioannides A.M. & Korovesis G.T., Transp. Res. Rec. 1286 (1990): what a joint takes from one side it gives the other.
 *
 * Left out: end couple on a long beam (the solver has no couples as loads); beam on fifteen separate springs (this bed is
 * continuous); rigid footings to 1e-5 with part contact (tests/convergence: the contact line crosses cells).
 */

import type { Floor, FloorResult, Transfer } from "@floorworthy/engine/plates";
import { describe, expect, test } from "vitest";
import { circle, corners, lengthOf, plainFloor, relativeError, solveOne, spread, square } from "../plates/setups.ts";

const within = (got: number, expected: number, tolerance: number): void =>
  expect(relativeError(got, expected), `${got} against ${expected}`).toBeLessThan(tolerance);

const width = 200;

/** A strip x = -left..right with EI = I E b h³/12, a bed of k N/mm per mm of beam, and a line load P at x = 0. */
const strip = (
  { E, I, k }: { E: number; I: number; k: number },
  P: number,
  left: number,
  right: number,
  support: "both-ways" | "pushes-only" = "both-ways",
): { r: FloorResult; lambda: number; moment: (x: number) => number } => {
  const lambda = (k / (4 * E * I)) ** 0.25;
  const thickness = ((12 * I) / width) ** (1 / 3);
  const outline = { x0: -left / lambda, x1: right / lambda, y0: 0, y1: width };
  const floor: Floor = plainFloor(outline, {
    E,
    nu: 0,
    k: k / width,
    thickness,
    zones: [{ rect: { ...outline, x0: 0 }, thickness }],
  });
  const thin = { x0: left > 0 ? -0.01 : 0, x1: 0.01, y0: 0, y1: width };
  const r = solveOne(floor, [spread(corners(thin), P)], { support, fineness: 24 });
  return { r, lambda, moment: (x) => r.momentsAt({ x: x / lambda, y: width / 2 }).Mx * width };
};
const unit = { E: 200_000, I: (width * 100 ** 3) / 12, k: 5 };
const across = (r: FloorResult, x: number): number => r.deflectionAt({ x, y: width / 2 });

describe("Boresi & Schmidt", () => {
  test("Example 10.1: rail, y 5.04 mm, M 51.21 kN·m, σ 137.5 MPa (0.1 %)", () => {
    const { r, moment, lambda } = strip({ E: 200_000, I: 36.9e6, k: 14 }, 170_000, 9, 9);
    within(lambda, 0.00083, 0.0006024096385542168);
    within(across(r, 0), 5.04, 0.000992063492063492);
    within(moment(0) / 1e6, 51.21, 0.001);
    within((moment(0) * 99.1) / 36.9e6, 137.5, 0.001);
  });
  test("Example 10.2: springs of 110 N/mm at 1.10 m as a bed, y 36.8 mm (0.2 %), M 4.886 kN·m, σ 99.7 MPa (0.1 %)", () => {
    const { r, moment } = strip({ E: 72_000, I: 2.45e6, k: 0.1 }, 12_000, 9, 9);
    within(across(r, 0), 36.8, 0.002);
    within(moment(0) / 1e6, 4.886, 0.001);
    within((moment(0) * 50) / 2.45e6, 99.7, 0.001);
  });
});

describe("Hetényi, Table I: an infinite beam follows A (deflection), B (slope), C (moment)", () => {
  const { r, moment, lambda } = strip(unit, 1, 12, 12);
  test.each([
    [1, 0.5083, 9.836710603974032e-5, 0.3096, 0.00016149870801033592, -0.1108, 0.0004512635379061372],
    [2, 0.0667, 0.0007496251874062969, 0.1231, 0.0004061738424045492, -0.1794, 0.0002787068004459309],
    [3, -0.0423, 0.0011820330969267141, 0.007, 0.007142857142857143, -0.0563, 0.0008880994671403197],
  ])("λx = %d", (x, A, tA, B, tB, C, tC) => {
    const y0 = lambda / (2 * unit.k);
    within(across(r, x / lambda) / y0, A, tA);
    within(-r.rotationAt({ x: x / lambda, y: width / 2 }).dwdx / (2 * lambda * y0), B, tB);
    within(moment(x) * 4 * lambda, C, tC);
  });
});

describe("Hetényi, ch. II", () => {
  test("infinite: y0 = Pλ/2k (1e-5), M0 = P/4λ (0.1 %), first zero 3π/4 (0.1 %), uplift e^-π (0.2 %)", () => {
    const { r, moment, lambda } = strip(unit, 1, 12, 12);
    const y0 = across(r, 0);
    within((y0 * unit.k) / lambda, 0.5, 1e-5);
    within(moment(0) * lambda, 0.25, 1e-3);
    within(across(r, Math.PI / lambda) / y0, -0.0432, 2e-3);
    expect(across(r, (2.356 * 0.999) / lambda)).toBeGreaterThan(0);
    expect(across(r, (2.356 * 1.001) / lambda)).toBeLessThan(0);
  });
  test("half-infinite, load at the end: y0 = 2Pλ/k (1e-5), largest |M| 0.3224 P/λ at π/4 (0.1 %)", () => {
    const { r, moment, lambda } = strip(unit, 1, 0, 14);
    within((across(r, 0) * unit.k) / lambda, 2, 1e-5);
    within(-moment(Math.PI / 4) * lambda, 0.3224, 1e-3);
  });
});

test("weightless beam on ground that only pushes: contact π/2λ each way (0.1 %), y0 0.545166 Pλ/k, M0 0.272583 P/λ (0.01 %)", () => {
  const { r, moment, lambda } = strip(unit, 1, 4, 4, "pushes-only");
  within((across(r, 0) * unit.k) / lambda, 0.545165705363684, 1e-4);
  within(moment(0) * lambda, 0.272582852681842, 1e-4);
  expect(across(r, ((Math.PI / 2) * 0.999) / lambda)).toBeGreaterThan(0);
  expect(across(r, ((Math.PI / 2) * 1.001) / lambda)).toBeLessThan(0);
  expect(r.governing.uplift?.value).toBeGreaterThan(0);
});

describe("joint that carries shear only, circle touching it (Ioannides & Korovesis 1990)", () => {
  const l = lengthOf(plainFloor(square(1)));
  const a = 0.14 * l;
  const solve = (transfer: Transfer): [number, number] => {
    const floor = plainFloor(square(9 * l), { joints: [{ axis: "x", at: 0, transfer }] });
    const r = solveOne(floor, [spread(circle(a, a * 1.0001), 1)], { focus: [{ x0: 0, x1: 2 * a, y0: -a, y1: a }] });
    return [r.deflectionAt({ x: 1e-9, y: 0 }), r.deflectionAt({ x: -1e-9, y: 0 })];
  };
  const [free, far] = solve({ kind: "none" });
  test("without transfer the far side stays where it is", () => expect(Math.abs(far / free)).toBeLessThan(1e-9));
  test("at an efficiency of 70 % the sides take 1/1.7 and 0.7/1.7 of the free edge's deflection (0.1 %)", () => {
    let [low, high] = [1e-4, 1e4];
    let [near, there] = [0, 0];
    for (let i = 0; i < 30; i++) {
      const shear = Math.sqrt(low * high);
      [near, there] = solve({ kind: "springs", shear, rotation: 0 });
      if (there / near < 0.7) low = shear;
      else high = shear;
    }
    within(near / free, 0.012176470588235294 / 0.0207, 1e-3);
    within(there / free, 0.008523529411764706 / 0.0207, 1e-3);
    within((2 * there) / (near + there), 0.823529411764706, 1e-3);
  });
  test("a hinge shares equally", () => {
    const [near, there] = solve({ kind: "hinge" });
    within(near / free, 0.5, 1e-3);
    within(there / free, 0.5, 1e-3);
  });
});
