/**
 * The plate solver against handbook plates (supported edges, no ground) and Hertz's plate on a bed.
 *
 * - Timoshenko S. & Woinowsky-Krieger S., Theory of Plates and Shells, 2nd ed. (1959): Tables 8, 23, 35, 37; Art. 57-58.
 * - Batista M. (2010), arXiv:1001.3016, Table 2; Taylor R.L. & Govindjee S., UCB/SEMM-2002/09, Table I (precise values).
 * - MacNeal R.H. & Harder R.L., Finite Elem. Anal. Des. 1 (1985) 3-20, Table 4.
 * - Logan D.L., A First Course in the Finite Element Method, 4th ed., Example 12.1 (its exact value).
 * - Hard simply supported thick plate: tabulated in many Mindlin-element papers (0.4273, 0.4904).
 * Tolerances are what the printed digits allow, or the known error of the printed value where it is larger.
 *
 * Left out: greatest shear force (the solver gives no shear forces); patch test with prescribed boundary deflections,
 * skew, rhombic and circular plates (outlines are rectangles with free, simple or clamped sides); soft and clamped thick
 * plates (the shear term is exact for hard simple supports only); tables of the 12-unknown rectangle (another element).
 */

import type { Edge, FloorLoad, FloorOptions, FloorResult } from "@floorworthy/engine/plates";
import { shearDeflection } from "@floorworthy/engine/plates";
import { describe, expect, test } from "vitest";
import { corners, lengthOf, plainFloor, relativeError, rigidityOf, solveOne, square } from "../plates/setups.ts";

const within = (got: number, expected: number, tolerance: number): void =>
  expect(relativeError(got, expected), `${got} against ${expected}`).toBeLessThan(tolerance);

const a = 1000;

interface Plate {
  readonly result: FloorResult;
  readonly D: number;
  readonly middle: { x: number; y: number };
}

const plate = (ratio: number, edge: Edge, load: "uniform" | "point", options: Partial<FloorOptions> = {}): Plate => {
  const outline = { x0: 0, x1: a, y0: 0, y1: ratio * a };
  const floor = plainFloor(outline, { k: 0, nu: 0.3, edges: { x0: edge, x1: edge, y0: edge, y1: edge } });
  const middle = { x: a / 2, y: (ratio * a) / 2 };
  const loads: FloorLoad[] =
    load === "uniform"
      ? [{ kind: "pressure", polygon: corners(outline), p0: 1, px: 0, py: 0 }]
      : [{ kind: "point", ...middle, P: a * a }];
  return {
    result: solveOne(floor, loads, { fineness: 6, pointForces: "sharp", ...options }),
    D: rigidityOf(floor),
    middle,
  };
};
const deflection = ({ result, D, middle }: Plate): number => (result.deflectionAt(middle) * D) / a ** 4;

describe("Timoshenko & Woinowsky-Krieger, Table 8: simply supported, uniform, ν = 0.3", () => {
  test.each([
    [1.0, 0.00406, 0.0479, 0.0010438413361169103, 0.0479, 0.0010438413361169103],
    [1.2, 0.00564, 0.0627, 0.0007974481658692185, 0.0501, 0.0009980039920159682],
    [1.5, 0.00772, 0.0812, 0.0006157635467980297, 0.0498, 0.0010040160642570282],
    [2.0, 0.01013, 0.1017, 0.0004916420845624386, 0.0464, 0.001077586206896552],
    [3.0, 0.01223, 0.1189, 0.00042052144659377626, 0.0406, 0.0012315270935960593],
  ])("b/a = %d: α %d (0.2 %%), β %d, β1", (ratio, alpha, beta, tolerance, beta1, tolerance1) => {
    const p = plate(ratio, "simple", "uniform");
    const { Mx, My } = p.result.momentsAt(p.middle);
    within(deflection(p), alpha, 0.002);
    within(Mx / a ** 2, beta, tolerance * (1 + 1e-9));
    within(My / a ** 2, beta1, tolerance1 * (1 + 1e-9));
  });
});

describe("precise values, uniform load, ν = 0.3", () => {
  test("simply supported square: w 0.00406235, M 0.0478864 (last digit), corner hold-down 0.065 (0.1 %)", () => {
    const p = plate(1, "simple", "uniform", { fineness: 12 });
    within(deflection(p), 0.00406235, 1.2308146762341993e-6);
    within(p.result.momentsAt(p.middle).Mx / a ** 2, 0.0478864, 1.044137792776237e-6);
    within((2 * Math.abs(p.result.momentsAt({ x: 0, y: 0 }).Mxy)) / a ** 2, 0.065, 1e-3);
  });
  test("clamped square: w 0.001265319, M 0.0229051 (last digit), mid-edge -0.0513338 (0.002 %)", () => {
    const p = plate(1, "clamped", "uniform", { fineness: 12, focus: [{ x0: 0, x1: 200, y0: 450, y1: 550 }] });
    within(deflection(p), 0.001265319, 3.951572686413466e-7);
    within(p.result.momentsAt(p.middle).My / a ** 2, 0.0229051, 2.1829199610567078e-6);
    within(p.result.momentsAt({ x: 0, y: a / 2 }).Mx / a ** 2, -0.0513338, 2e-5);
  });
});

test("Table 35, p. 202: clamped, uniform, b/a = 2, ν = 0.3", () => {
  const p = plate(2, "clamped", "uniform", { fineness: 8 });
  const centre = p.result.momentsAt(p.middle);
  within(deflection(p), 0.00254, 0.0035);
  within(centre.Mx / a ** 2, 0.0412, 0.0012135922330097088);
  within(centre.My / a ** 2, 0.0158, 0.0031645569620253164);
  within(p.result.momentsAt({ x: 0, y: a }).Mx / a ** 2, -0.0829, 0.0006031363088057902);
  within(p.result.momentsAt({ x: a / 2, y: 0 }).My / a ** 2, -0.0571, 0.003);
});

describe("Table 23: simply supported, point load in the middle, w = α P a²/D (0.25 %)", () => {
  test.each([
    [1.0, 0.0116],
    [1.2, 0.01353],
    [1.4, 0.01484],
    [1.6, 0.0157],
    [2.0, 0.01651],
    [3.0, 0.0169],
  ])("b/a = %d: %d", (ratio, alpha) => {
    within(
      deflection(plate(ratio, "simple", "point", { focus: [square(100, a / 2, (ratio * a) / 2)], fineness: 2 })),
      alpha,
      0.0025,
    );
  });
});

describe("Table 37: clamped, point load in the middle, w = α P a²/D (0.25 %), M mid long edge = β P (0.2 %)", () => {
  test.each([
    [1.0, 0.0056, -0.1257],
    [1.2, 0.00647, -0.149],
    [1.4, 0.00691, -0.1604],
    [1.6, 0.00712, -0.1651],
    [1.8, 0.0072, -0.1667],
    [2.0, 0.00722, -0.1674],
  ])("b/a = %d: α %d, β %d", (ratio, alpha, beta) => {
    const p = plate(ratio, "clamped", "point", { focus: [square(100, a / 2, (ratio * a) / 2)], fineness: 6 });
    within(deflection(p), alpha, 0.0025);
    within(p.result.momentsAt({ x: 0, y: p.middle.y }).Mx / a ** 2, beta, 0.002);
  });
});

describe("MacNeal & Harder, Table 4: rectangular plate, a = 2, D = 1.6e-6, q = 1e-4, P = 4e-4", () => {
  // w = coefficient q a⁴/D; their deflections are in units of 1e3 q a⁴/D or 1e3 P a²/D
  test.each([
    ["simple", "uniform", 1, 4.062, 0.00012309207287050712],
    ["simple", "point", 1, 11.6, 0.00043103448275862074],
    ["clamped", "uniform", 1, 1.26, 0.005],
    ["clamped", "point", 1, 5.6, 0.0025],
    ["clamped", "uniform", 5, 2.604, 0.00019201228878648233],
  ] as const)("%s, %s, b/a = %d: %d", (edge, load, ratio, expected, tolerance) => {
    const focus = load === "point" ? [square(50, a / 2, a / 2)] : [];
    within(1000 * deflection(plate(ratio, edge, load, { focus })), expected, tolerance);
  });
});

test("Logan Example 12.1: clamped 20 × 20 × 0.1 in, E = 30e6 psi, 100 lb in the middle: exact 0.081711 in (0.01 %)", () => {
  const outline = { x0: 0, x1: 508, y0: 0, y1: 508 };
  const clamped = { x0: "clamped", x1: "clamped", y0: "clamped", y1: "clamped" } as const;
  const psi = 0.0068947572931684;
  const floor = plainFloor(outline, { k: 0, nu: 0.3, E: 30e6 * psi, thickness: 2.54, edges: clamped });
  const r = solveOne(floor, [{ kind: "point", x: 254, y: 254, P: 444.82216152605 }], {
    focus: [square(25, 254, 254)],
    fineness: 3,
    pointForces: "sharp",
  });
  within(r.deflectionAt({ x: 254, y: 254 }) / 25.4, 0.08171107049957395, 1e-4);
});

describe("thick plate, hard simple supports, uniform, κ = 5/6: thin deflection + shear term, 1e-2 q a⁴/D", () => {
  test.each([
    [0.1, 0.4273, 0.00011701380762930026],
    [0.2, 0.4904, 0.00010195758564437195],
  ])("h/a = %d: %d (last digit)", (ratio, expected, tolerance) => {
    const { result, D, middle } = plate(1, "simple", "uniform", { fineness: 8 });
    const h = ratio * a;
    const E = (12 * (1 - 0.3 ** 2) * D) / h ** 3; // the same D with another thickness
    const shear = shearDeflection({ E, nu: 0.3 }, h, result.momentsAt(middle));
    within((100 * (result.deflectionAt(middle) + shear) * D) / a ** 4, expected, tolerance);
  });
  test("the result adds the term of its own thickness", () => {
    const { result, middle } = plate(1, "simple", "uniform");
    const own = shearDeflection({ E: 28_000, nu: 0.3 }, 100, result.momentsAt(middle));
    expect(result.shearDeflectionAt(middle)).toBeCloseTo(own, 12);
  });
});

describe("infinite plate on a bed, point load (Hertz 1884)", () => {
  const k = 0.027;
  const l = lengthOf(plainFloor(square(1), { k }));
  const r = solveOne(plainFloor(square(13 * l), { k }), [{ kind: "point", x: 0, y: 0, P: 1 }], {
    focus: [square(4 * l)],
    fineness: 3,
    pointForces: "sharp",
  });
  test("w0 = P l²/8D and bed pressure P/8l² (0.4 %)", () => {
    within(r.deflectionAt({ x: 0, y: 0 }) * k * l * l, 0.125, 0.004);
    within(r.groundPressureAt({ x: 0, y: 0 }) * l * l, 0.125, 0.004);
  });
  test("w(l) = 0.63024675 P l²/8D (1e-6)", () => {
    within(r.deflectionAt({ x: l, y: 0 }) * k * l * l, 0.125 * 0.6302467456474424, 1e-6);
  });
  test("first zero at r = 3.91467 l (last digit)", () => {
    let [low, high] = [3.5 * l, 4.5 * l];
    for (let i = 0; i < 50; i++) {
      const middle = (low + high) / 2;
      if (r.deflectionAt({ x: middle, y: 0 }) > 0) low = middle;
      else high = middle;
    }
    within(low / l, 3.91467, 1.2772468688293012e-6);
  });
});

test("simply supported square on a bed, l = a/4, uniform, ν = 0.3 (Navier, Art. 57): w within 1e-6, Mx within 0.01 %", () => {
  const outline = { x0: 0, x1: a, y0: 0, y1: a };
  const simple = { x0: "simple", x1: "simple", y0: "simple", y1: "simple" } as const;
  const D = rigidityOf(plainFloor(outline, { nu: 0.3 }));
  const floor = plainFloor(outline, { nu: 0.3, k: (256 * D) / a ** 4, edges: simple });
  const r = solveOne(floor, [{ kind: "pressure", polygon: corners(outline), p0: 1, px: 0, py: 0 }], { fineness: 16 });
  within((r.deflectionAt({ x: a / 2, y: a / 2 }) * D) / a ** 4, 0.0024153859510741504, 1e-6);
  within(r.momentsAt({ x: a / 2, y: a / 2 }).Mx / a ** 2, 0.026891478675020702, 1e-4);
});
