/**
 * The plate solver against exact thin-plate values.
 *
 * Reference values derived by two independent calculations each (Kelvin functions against a Hankel integral; Fourier
 * integral of the free-edge half-plate against Westergaard 1948; Legendre Ritz 32 × 32 on squares of 8 l and 10 l).
 * Theory: Timoshenko & Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed. (1959), ch. 8; Westergaard 1926, 1948.
 * Tolerances are those of the reference values. A thin-plate solver tends to 142.0 psi under the load of Huang's example,
 * not to the 143.7 of the special theory.
 */
import { thickPlateFactor } from "@floorworthy/engine/plates";
import { describe, expect, test } from "vitest";
import {
  circle,
  corners,
  halfCircle,
  inch,
  lengthOf,
  pci,
  plainFloor,
  pound,
  psi,
  relativeError,
  solveOne,
  spread,
  square,
} from "../plates/setups.ts";

const within = (got: number, expected: number, tolerance: number): void =>
  expect(relativeError(got, expected), `${got} against ${expected}`).toBeLessThan(tolerance);

const k = 0.027;
const l = lengthOf(plainFloor(square(1), { k }));

describe("Huang's slab: E = 4e6 psi, ν = 0.15, h = 10 in, k = 100 pci, P = 10,000 lb, a = 6 in", () => {
  const slab = { thickness: 10 * inch, E: 4e6 * psi, nu: 0.15, k: 100 * pci };
  const L = lengthOf(plainFloor(square(1), slab));
  const a = 6 * inch;
  const P = 10_000 * pound;
  const stress = (moment: number): number => (6 * moment) / slab.thickness ** 2 / psi;

  test("interior: 0.0066990 in, 142.028 psi (0.1 %)", () => {
    const r = solveOne(plainFloor(square(9 * L), slab), [spread(circle(a), P)], { focus: [square(a)] });
    within(r.deflectionAt({ x: 0, y: 0 }) / inch, 0.0066990192534677915, 1e-3);
    within(r.governing.stressBottom.value / psi, 142.02833105277307, 1e-3);
  });
  test("edge, circle: 279.316 psi (0.05 %), 0.0207453 in (0.1 %)", () => {
    const r = solveOne(
      plainFloor({ x0: 0, x1: 9 * L, y0: -9 * L, y1: 9 * L }, slab),
      [spread(circle(a, a * 1.0001), P)],
      {
        focus: [{ x0: 0, x1: 2 * a, y0: -a, y1: a }],
      },
    );
    within(stress(r.momentsAt({ x: 0, y: 0 }).My), 279.31606688169035, 5e-4);
    within(r.deflectionAt({ x: 0, y: 0 }) / inch, 0.020745319901188972, 1e-3);
  });
  test("edge, semicircle: 330.032 psi (0.05 %), 0.0221624 in (0.1 %)", () => {
    const r = solveOne(plainFloor({ x0: 0, x1: 9 * L, y0: -9 * L, y1: 9 * L }, slab), [spread(halfCircle(a), P)], {
      focus: [{ x0: 0, x1: a, y0: -a, y1: a }],
    });
    within(stress(r.momentsAt({ x: 0, y: 0 }).My), 330.0315149954783, 5e-4);
    within(r.deflectionAt({ x: 0, y: 0 }) / inch, 0.022162354093354562, 1e-3);
  });
  test("corner, square patch of 10.632 in: 0.0562737 in (0.1 %), top stress 194.787 psi (0.3 %) at 36.31 in (1 %)", () => {
    const c = 10.632 * inch;
    const patch = { x0: 0, x1: c, y0: 0, y1: c };
    const r = solveOne(plainFloor({ x0: 0, x1: 9 * L, y0: 0, y1: 9 * L }, slab), [spread(corners(patch), P)], {
      focus: [patch, { x0: 0, x1: 50 * inch, y0: 0, y1: 50 * inch }],
    });
    within(r.deflectionAt({ x: 0, y: 0 }) / inch, 0.056273655136309754, 1e-3);
    const top = (d: number): number => {
      const { Mx, My, Mxy } = r.momentsAt({ x: d * Math.SQRT1_2, y: d * Math.SQRT1_2 });
      return stress(-(Mx + My) / 2 + Math.hypot((Mx - My) / 2, Mxy));
    };
    const steps = Array.from({ length: 601 }, (_, i) => (20 + 0.05 * i) * inch);
    const worst = steps.reduce((best, d) => (top(d) > top(best) ? d : best));
    within(top(worst), 194.78669254851116, 3e-3);
    within(worst / inch, 36.31143416549858, 1e-2);
  });
});

test("thick-plate factor: ordinary theory 141.92 psi becomes 143.7 (Huang, Pavement Analysis and Design, 2nd ed., Ex. 4.3)", () => {
  const [P, h, a, nu] = [10_000, 10, 6, 0.15];
  const L = lengthOf(plainFloor(square(1), { thickness: 10, E: 4e6, nu, k: 100 }));
  const ordinary = ((3 * (1 + nu) * P) / (2 * Math.PI * h * h)) * (Math.log((2 * L) / a) + 0.5 - 0.5772156649);
  within(ordinary * thickPlateFactor(a, h, L), 143.7, 0.00034794711203897015);
  expect(thickPlateFactor(1.8 * h, h, L)).toBe(1);
});

describe("infinite slab under a circle: w k l²/P and M/P", () => {
  // w to the printed 1e-6 needs more unknowns than a test should take: checked to 1e-6 at a/l = 0.5 below, and the rate in
  // tests/convergence; M is left out here for the same reason.
  test("a/l = 0.5: w 0.11471904 within 1e-6", () => {
    const floor = plainFloor(square(12 * l), { k });
    const r = solveOne(floor, [spread(circle(0.5 * l, 0, 0, 1440), 1)], { focus: [square(1.5 * l)], fineness: 2.5 });
    within(r.deflectionAt({ x: 0, y: 0 }) * k * l * l, 0.11471904002368882, 1e-6);
  });
});

describe("free edge, load touching it: w k l²/P and M/P within 0.01 %", () => {
  const half = { x0: 0, x1: 9 * l, y0: -9 * l, y1: 9 * l };
  const cases = [
    ["circle", 0.05, 0.6961388954304412, 0.4137858865310399],
    ["circle", 0.1, 0.5395239285222282, 0.39649810135562785],
    ["circle", 0.25, 0.34025364103189026, 0.34723795892708215],
    ["circle", 0.5, 0.20281592454748337, 0.27490722445326393],
    ["semicircle", 0.05, 0.7851186795914015, 0.42367932673442843],
    ["semicircle", 0.1, 0.6260067904434927, 0.41568812346403355],
    ["semicircle", 0.25, 0.41940912919641393, 0.3911098226989781],
    ["semicircle", 0.5, 0.27018225926577466, 0.3500095906171661],
  ] as const;
  test.each(cases)("%s a/l = %d: M %d, w %d", (shape, ratio, M, w) => {
    const a = ratio * l;
    const load = shape === "circle" ? circle(a, a * (1 + 2e-5), 0, 720) : halfCircle(a, 720);
    const deep = shape === "circle" ? 4 * a : 2 * a;
    const r = solveOne(plainFloor(half, { k }), [spread(load, 1)], {
      focus: [{ x0: 0, x1: deep, y0: -2 * a, y1: 2 * a }],
      fineness: 2,
    });
    within(r.momentsAt({ x: 0, y: 0 }).My, M, 1e-4);
    within(r.deflectionAt({ x: 0, y: 0 }) * k * l * l, w, 1e-4);
  });
});

describe("point loads: w k l²/P", () => {
  test.each([
    [0, 0.40824829046386135],
    [0.15, 0.43143802051999813],
    [0.2, 0.4406399924441432],
  ])("on a free edge, ν = %d: %d within 0.01 %", (nu, w) => {
    const L = lengthOf(plainFloor(square(1), { k, nu }));
    const r = solveOne(
      plainFloor({ x0: 0, x1: 9 * L, y0: -9 * L, y1: 9 * L }, { k, nu }),
      [{ kind: "point", x: 0, y: 0, P: 1 }],
      {
        focus: [{ x0: 0, x1: L / 8, y0: -L / 8, y1: L / 8 }],
        fineness: 2,
        pointForces: "sharp",
      },
    );
    within(r.deflectionAt({ x: 0, y: 0 }) * k * L * L, w, 1e-4);
  });
  test("on a corner: 1.21220 within 0.02 %", () => {
    const r = solveOne(
      plainFloor({ x0: 0, x1: 9 * l, y0: 0, y1: 9 * l }, { k }),
      [{ kind: "point", x: 0, y: 0, P: 1 }],
      {
        focus: [{ x0: 0, x1: l / 8, y0: 0, y1: l / 8 }],
        pointForces: "sharp",
      },
    );
    within(r.deflectionAt({ x: 0, y: 0 }) * k * l * l, 1.2121971775589855, 2e-4);
  });
});
