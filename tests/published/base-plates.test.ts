/**
 * AISC Steel Design Guide 1, Base Plate and Anchor Rod Design, 2nd ed. (J. M. Fisher & L. A. Kloiber, 2006).
 * Printed numbers quoted by a document that was read. Units of the book: kip, in, ksi.
 * Tolerance: half a unit of the last printed digit, except where the row says otherwise.
 */
import {
  bearingPressureLimit,
  bearingThickness,
  concentricPlate,
  solveContact,
  tensionThickness,
  uniformBlock,
} from "@floorworthy/engine/contact";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

const W12x96 = { d: 12.7, bf: 12.2, tf: 0.9 };

/** Within half a unit of the last digit printed. */
const prints = (value: number, printed: string): void => {
  const decimals = printed.split(".")[1]?.length ?? 0;
  expect(Math.abs(value - Number(printed))).toBeLessThanOrEqual(0.5000001 * 10 ** -decimals);
};

const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};

describe("Example 4.1, concentric load (W12x96, Pu = 700, Pa = 430, f'c = 3, Fy = 36, N = 22, B = 20)", () => {
  const given = { length: 22, width: 20, depth: W12x96.d, flange: W12x96.bf, Fy: 36 };
  const lrfd = concentricPlate({ ...given, P: 700, maxPressure: bearingPressureLimit(3, 1) });
  const asd = concentricPlate({ ...given, P: 430, maxPressure: bearingPressureLimit(3, 1, "ASD"), format: "ASD" });
  test("required area 422 in²", () => prints(lrfd.requiredArea, "422"));
  test("φPp 729 k", () => prints(lrfd.bearingStrength, "729"));
  test("Pp/Ω 449 k", () => prints(asd.bearingStrength, "449"));
  test("m 4.97 in", () => prints(lrfd.m, "4.97"));
  test("n 5.12 in", () => prints(lrfd.n, "5.12"));
  test("n' 3.11 in", () => prints(lrfd.nPrime, "3.11"));
  test("X 0.960 within 0.1 % (the book multiplies rounded factors)", () =>
    expect(Math.abs(lrfd.X / 0.96 - 1)).toBeLessThanOrEqual(0.001));
  test("λ before its cap 1.63 within 0.6 % (from the rounded X); capped 1", () => {
    expect(Math.abs(lrfd.lambdaUncapped / 1.63 - 1)).toBeLessThanOrEqual(0.006);
    expect(lrfd.lambda).toBe(1);
  });
  test("t 1.60 in LRFD", () => prints(lrfd.thickness, "1.60"));
  test("t 1.54 in ASD", () => prints(asd.thickness, "1.54"));
});

describe("Example 4.5(a), uplift on four rods 4 x 4 in (56 k wind, 22 k dead)", () => {
  const net = 1.6 * 56 - 0.9 * 22;
  const anchors = [-2, 2].flatMap((x) => [-2, 2].map((y) => ({ id: `${x},${y}`, x, y, stiffness: 800, preload: 0 })));
  const outline = [-7, 7].flatMap((x) => (x < 0 ? [7, -7] : [-7, 7]).map((y) => ({ x, y })));
  const rest = able(solveContact({ outline, anchors, bedding: 100 }, { P: -net, Mx: 0, My: 0, Vx: 0, Vy: 0 }));
  test("net tension 69.8 k", () => prints(net, "69.8"));
  test("17.5 k a rod, the concrete without work", () => {
    // 69.8 / 4 = 17.45, which the book prints as 17.5
    for (const { T } of rest.anchorTension) prints(T, "17.5");
    expect(rest.contactArea).toBe(0);
  });
});

describe("Example 4.6, small moment (PD = 100, PL = 160 k; MD = 250, ML = 400 k-in; f'c = 4, Fy = 36, N = B = 19)", () => {
  const [Pu, Mu] = [1.2 * 100 + 1.6 * 160, 1.2 * 250 + 1.6 * 400];
  const n = (19 - 0.8 * W12x96.bf) / 2;
  const plate = { length: 19, width: 19, anchorDistance: 8 };
  const fp = bearingPressureLimit(4, 1);
  const block = able(uniformBlock({ ...plate, P: Pu, M: Mu, maxPressure: fp }));
  test("Pu 376 k, Mu 940 k-in", () => {
    prints(Pu, "376");
    prints(Mu, "940");
  });
  test("e 2.50 in", () => prints(block.eccentricity, "2.50"));
  test("fp,max 2.21 ksi", () => prints(fp, "2.21"));
  test("qmax 42.0 k/in", () => prints(fp * 19, "42.0"));
  test("e_crit 5.02 in", () => prints(block.criticalEccentricity, "5.02"));
  test("small moment, Y 14.0 in, no pull", () => {
    expect(block.moment).toBe("small");
    prints(block.bearingLength, "14.0");
    expect(block.tension).toBe(0);
  });
  test("fp 1.41 ksi", () => prints(block.pressure, "1.41"));
  test("q 26.9 k/in", () => prints(block.pressure * 19, "26.9"));
  test("t 1.36 in, n governs", () => prints(bearingThickness(n, block.pressure, block.bearingLength, 36), "1.36"));

  describe("ASD (Pa = 260, Ma = 650, Ω = 2.50)", () => {
    const fpa = bearingPressureLimit(4, 1, "ASD");
    const asd = able(uniformBlock({ ...plate, P: 260, M: 650, maxPressure: fpa }));
    test("e 2.50 in", () => prints(asd.eccentricity, "2.50"));
    test("fp,max 1.36 ksi", () => prints(fpa, "1.36"));
    test("qmax 25.8 k/in", () => prints(fpa * 19, "25.8"));
    test("e_crit 4.46 in from the book's rounded qmax of 25.8 (4.47 unrounded)", () => {
      const rounded = able(uniformBlock({ ...plate, P: 260, M: 650, maxPressure: 25.8 / 19 }));
      prints(rounded.criticalEccentricity, "4.46");
    });
    test("fp 0.977 ksi", () => prints(asd.pressure, "0.977"));
    test("q 18.6 k/in", () => prints(asd.pressure * 19, "18.6"));
    test("t 1.39 in", () => prints(bearingThickness(n, asd.pressure, asd.bearingLength, 36, "ASD"), "1.39"));
  });
});

describe("Example 4.7, large moment (MD = 1000, ML = 1500 k-in; rods 1.5 in from the edge)", () => {
  const [Pu, Mu] = [376, 1.2 * 1000 + 1.6 * 1500];
  const fp = bearingPressureLimit(4, 1);
  const side = (N: number) => ({ P: Pu, M: Mu, length: N, width: N, anchorDistance: N / 2 - 1.5, maxPressure: fp });
  const block = able(uniformBlock(side(22)));
  test("Mu 3600 k-in, e 9.57 in", () => {
    prints(Mu, "3600");
    prints(block.eccentricity, "9.57");
  });
  test("trial 1, N = 19: 306 < 315, so no block balances and the plate is too small", () => {
    const f = 19 / 2 - 1.5;
    prints((f + 9.5) ** 2, "306");
    expect(Math.abs((2 * Pu * (Mu / Pu + f)) / (fp * 19) / 315 - 1)).toBeLessThanOrEqual(0.003); // the row's tolerance
    const small = uniformBlock(side(19));
    expect(isUnable(small) && small.reason).toContain("too small");
  });
  test("qmax 48.6 k/in", () => prints(fp * 22, "48.6"));
  test("e_crit 7.13 in", () => prints(block.criticalEccentricity, "7.13"));
  test("Y 9.30 in within 0.2 % (book rounds on the way)", () =>
    expect(Math.abs(block.bearingLength / 9.3 - 1)).toBeLessThanOrEqual(0.002));
  test("Tu 76.0 k from the book's rounded q and Y; 1 % unrounded", () => {
    prints(48.6 * 9.3 - Pu, "76.0");
    expect(Math.abs(block.tension / 76.0 - 1)).toBeLessThanOrEqual(0.01);
  });
  test("t bearing 2.26 in, n = 6.12 governs", () =>
    prints(bearingThickness((22 - 0.8 * W12x96.bf) / 2, block.pressure, block.bearingLength, 36), "2.26"));
  test("x 3.60 in; t tension 1.24 in", () => {
    const x = 9.5 - W12x96.d / 2 + W12x96.tf / 2;
    prints(x, "3.60");
    prints(tensionThickness(76.0, x, 22, 36), "1.24");
  });
  test("38.0 k a rod from the book's 76.0", () => prints(76.0 / 2, "38.0"));
});
