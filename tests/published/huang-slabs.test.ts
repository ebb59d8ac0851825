/**
 * Huang Y.H., Pavement Analysis and Design, 2nd ed. (2004), chapter 4, Examples 4.1 to 4.5 (some printings number them
 * 4.1 to 4.3). Printed numbers as quoted by a document that was read; tolerance = half the last printed digit unless said.
 */

import {
  bradburyCoefficient,
  cornerDeflection,
  cornerStress,
  curlingStress,
  dualRadius,
  edgeDeflection,
  edgeStress,
  interiorDeflection,
  interiorStress,
  loadTransfer,
  restateTransfer,
  type SlabOnGround,
  sidesOfJoint,
  specialRadius,
  squareSide,
  stiffnessRadius,
} from "@floorworthy/engine/slabs";
import { describe, expect, test } from "vitest";

/** lb, in, psi throughout: the formulas are in a consistent set, so the book's own units can be put in. */
const slab: SlabOnGround = { E: 4e6, nu: 0.15, h: 10, k: 100 };
const [P, a] = [10000, 6];
const near = (value: number, printed: number, half: number) =>
  expect(Math.abs(value - printed)).toBeLessThanOrEqual(half * 1.0001);

describe("Examples 4.2 to 4.4: E = 4e6 psi, ν = 0.15, h = 10 in, k = 100 pci, P = 10,000 lb, a = 6 in", () => {
  test("radius of relative stiffness 42.97 in", () => near(stiffnessRadius(slab), 42.97, 0.005));
  test("special radius 5.804 in", () => near(specialRadius(a, slab.h), 5.804, 0.0005));
  test("equivalent square 10.632 in (1.772 a)", () => near(squareSide(a), 10.632, 0.0005));
  test("corner, Westergaard: 186.6 psi", () => near(cornerStress(slab, P, a, "westergaard"), 186.6, 186.6 * 0.0005)); // the book rounds l
  test("corner, Westergaard: 0.0502 in", () => near(cornerDeflection(slab, P, a, "westergaard"), 0.0502, 0.00005));
  test("corner, Ioannides: 190.3 psi", () => near(cornerStress(slab, P, a, "ioannides"), 190.3, 0.05));
  test("corner, Ioannides: 0.0560 in", () => near(cornerDeflection(slab, P, a, "ioannides"), 0.056, 0.00005));
  test("interior: 143.7 psi", () => near(interiorStress(slab, P, a), 143.7, 0.05));
  test("interior: 0.0067 in", () => near(interiorDeflection(slab, P, a), 0.0067, 0.00005));
  test("edge, circle: 279.4 psi", () => near(edgeStress(slab, P, a, "1948-circle"), 279.4, 279.4 * 0.0005)); // book rounds constants
  test("edge, circle: 0.0207 in", () => near(edgeDeflection(slab, P, a, "1948-circle"), 0.0207, 0.00005));
});

describe("Example 4.5: two 5,000-lb loads 14 in apart at 88.42 psi", () => {
  const one = 7.85; // the book carries the rounded radius
  test("radius of the one circle 7.85 in", () => near(dualRadius(5000, 88.42, 14), 7.85, 0.005));
  test("special radius 7.34 in", () => near(specialRadius(one, slab.h), 7.34, 7.34 * 0.001));
  test("corner 166.8 psi", () => near(cornerStress(slab, P, one, "ioannides"), 166.8, 0.1));
  test("interior 130.8 psi", () => near(interiorStress(slab, P, one), 130.8, 130.8 * 0.0012));
  test("edge 244.2 psi", () => near(edgeStress(slab, P, one, "1948-circle"), 244.2, 244.2 * 0.001));
});

describe("Example 4.1: curling of a 25 × 12 ft slab, h = 8 in, k = 200 pci, 20 °F", () => {
  const thin: SlabOnGround = { E: 4e6, nu: 0.15, h: 8, k: 200 };
  const [Lx, Ly] = [300 / stiffnessRadius(thin), 144 / stiffnessRadius(thin)];
  test("l = 30.57 in, Lx/l = 9.81, Ly/l = 4.71", () => {
    near(stiffnessRadius(thin), 30.57, 0.005);
    near(Lx, 9.81, 0.005);
    near(Ly, 4.71, 0.005);
  });
  test("coefficients off the chart 1.07 and 0.63, read to 1.5 %", () => {
    near(bradburyCoefficient(Lx), 1.07, 1.07 * 0.015);
    near(bradburyCoefficient(Ly), 0.63, 0.63 * 0.015);
  });
  test("with the chart's coefficients 238 psi inside and 214 psi at the edge", () => {
    const { interior, edge } = curlingStress(thin, 5e-6, 20, 1.07, 0.63);
    near(interior, 238, 0.5);
    near(edge, 214, 0.5);
  });
  test("largest coefficient 1.084 off the chart (Fig. 4.4); exactly 1.08627 at 8.886 l", () => {
    near(bradburyCoefficient(2 * Math.SQRT2 * Math.PI), 1.084, 1.084 * 0.0025);
    near(bradburyCoefficient(2 * Math.SQRT2 * Math.PI), 1.08627, 0.000005);
  });
});

describe("Ioannides & Korovesis, TRR 1286 (1990): a joint shares the free-edge deflection (identity, from memory)", () => {
  test("0.0207 in at 70 %: 0.012176 and 0.008524 in; the same joint is 82.35 % by the other definition", () => {
    const { loaded, unloaded } = sidesOfJoint(0.0207, 0.7);
    near(loaded, 0.012176470588235294, 1e-9);
    near(unloaded, 0.008523529411764706, 1e-9);
    near(loadTransfer(loaded, unloaded, "share"), 0.823529411764706, 1e-9);
    near(restateTransfer(0.7, "ratio", "share"), 0.823529411764706, 1e-9);
    near(restateTransfer(restateTransfer(0.7, "ratio", "share"), "share", "ratio"), 0.7, 1e-12);
  });
});

/**
 * Packard R.G., Design of Concrete Airport Pavement, PCA (1973), table of l for E = 4e6 psi, ν = 0.15; from memory,
 * reproduces by calculation.
 */
describe("PCA table of the radius of relative stiffness, in", () => {
  test.each([
    [6, 50, 34.84],
    [6, 100, 29.3],
    [6, 200, 24.63],
    [6, 300, 22.26],
    [8, 50, 43.23],
    [8, 100, 36.35],
    [8, 200, 30.57],
    [8, 300, 27.62],
    [10, 50, 51.1],
    [10, 100, 42.97],
    [10, 200, 36.13],
    [10, 300, 32.65],
    [12, 100, 49.27],
    [12, 200, 41.43],
  ])("h = %s in, k = %s pci: %s", (h, k, printed) =>
    near(stiffnessRadius({ E: 4e6, nu: 0.15, h, k }), printed, printed * 0.00021),
  );
  test("l = 24.1652 (h³/k)^¼", () => near(stiffnessRadius({ E: 4e6, nu: 0.15, h: 1, k: 1 }), 24.1652, 0.00005));
});
