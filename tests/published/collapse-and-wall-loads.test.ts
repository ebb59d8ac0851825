/**
 * Collapse loads: Concrete Society TR34, 4th ed. (2013) after Meyerhof 1962, and ACI 360R-10 ch. 11; formulas from
 * memory, these are evaluations by hand, not printed examples.
 * Wall loads: UFC 3-320-06A / TM 5-809-12 (1987), Table 3-2, printed to 5 lb/ft.
 * Post load: ACI 360R-06, Appendix A1.3 (p. 62), the arithmetic only.
 */

import { fromBase, toBase } from "@floorworthy/engine/quantities";
import {
  clayShape,
  collapseLoad,
  collapseLoadSingleMoment,
  lineLoadCapacity,
  presumptiveSoils,
  subgradeFromBearing,
  subgradeFromCbr,
  subgradeOnBase,
  subgradeOnSand,
  thicknessFactor,
} from "@floorworthy/engine/slabs";
import { describe, expect, test } from "vitest";

describe("TR34, Mp = 1, Mn = 0.5 kN·m/m", () => {
  test.each([
    ["interior", 0, 9.42477796076938],
    ["interior", 0.2, 20.19595277307724],
    ["interior", 0.3, 20.943951023931955],
    ["edge", 0, 3.356194490192345],
    ["edge", 0.2, 7.7450642081361805],
    ["edge", 0.3, 8.390486225480862],
    ["corner", 0, 1],
    ["corner", 0.2, 2.5],
    ["corner", 0.3, 2.857142857142857],
  ] as const)("%s, a/l = %s: %s kN", (place, ratio, kN) =>
    expect(collapseLoad(place, { Mp: 1, Mn: 0.5 }, ratio, 1)).toBeCloseTo(kN, 10),
  );
  test("halfway between 0 and 0.2 the load is halfway", () =>
    expect(collapseLoad("interior", { Mp: 1, Mn: 0.5 }, 0.1, 1)).toBeCloseTo((9.42477796 + 20.19595277) / 2, 7));
});

test("ACI 360R-10, M0 = 1, a/L = 0.1: 7.2, 4.55, 2.8", () => {
  expect(collapseLoadSingleMoment("interior", 1, 0.1, 1)).toBeCloseTo(7.2, 12);
  expect(collapseLoadSingleMoment("edge", 1, 0.1, 1)).toBeCloseTo(4.55, 12);
  expect(collapseLoadSingleMoment("corner", 1, 0.1, 1)).toBeCloseTo(2.8, 12);
});

/** fr = 9 √f'c, E = 57000 √f'c (a choice made because it fits the table), allowable 1.6 √f'c (par. 3-4), k = 100 pci. */
describe("Table 3-2: wall load on a slab of plain thickness, lb/ft, within the 5 lb/ft it is printed to", () => {
  const printed: readonly (readonly [number, readonly number[]])[] = [
    [4, [425, 455, 485, 510]],
    [5, [565, 600, 640, 675]],
    [6, [710, 755, 805, 850]],
    [7, [860, 920, 975, 1030]],
    [8, [1015, 1080, 1150, 1215]],
    [9, [1175, 1255, 1330, 1410]],
    [10, [1340, 1430, 1520, 1605]],
  ];
  const rows = printed.flatMap(([t, loads]) =>
    loads.map((load, i): [number, number, number] => [t, 550 + 50 * i, load]),
  );
  test.each(rows)("%s in, fr %s psi: %s", (t, fr, load) => {
    const root = fr / 9;
    const slab = {
      E: toBase(57000 * root, "psi"),
      nu: 0.15,
      h: toBase(t, "in"),
      k: toBase(100, "pci"),
    };
    const P = fromBase(lineLoadCapacity(slab, toBase(1.6 * root, "psi")), "lb/ft");
    expect(Math.abs(P - load)).toBeLessThanOrEqual(5);
  });
  test.each([
    [25, 1.3],
    [50, 1.1],
    [100, 1],
    [200, 0.9],
    [300, 0.8],
  ])("thickness factor for k = %s pci: %s", (k, factor) =>
    expect(Math.abs(thicknessFactor(k) - factor)).toBeLessThanOrEqual(0.051),
  );
});

test("ACI 360R-06 A1.3: MR 570 psi, allowable 407, 26.3 psi per 1,000 lb of a 15.5-kip post", () => {
  const MR = 9 * Math.sqrt(4000);
  expect(Math.abs(MR - 570)).toBeLessThanOrEqual(570 * 0.002);
  expect(Math.round(570 / 1.4)).toBe(407);
  expect(407 / 15.5).toBeCloseTo(26.3, 1);
});

describe("subgrade", () => {
  test("TM 5-818-1: long footing on clay 0.667; wide footing on sand 0.25 (from memory); k = 36 qa, kcf from ksf", () => {
    expect(clayShape(1e9)).toBeCloseTo(0.667, 3);
    expect(subgradeOnSand(1, 1e12)).toBeCloseTo(0.25, 9);
    expect(fromBase(subgradeFromBearing(toBase(1000, "psf")), "pcf") / 1000).toBeCloseTo(36, 9);
  });
  test("IBC 2012 Table 1806.2 and its footnote: 1 psf = 0.0479 kPa, 1 psf/ft = 0.157 kPa/m", () => {
    expect(fromBase(presumptiveSoils["clay or silt"].bearing, "psf")).toBeCloseTo(1500, 9);
    expect(fromBase(presumptiveSoils.gravel.bearing, "psf")).toBeCloseTo(3000, 9);
    expect(fromBase(presumptiveSoils["sand or silty or clayey sand and gravel"].bearing, "psf")).toBeCloseTo(2000, 9);
    expect(fromBase(toBase(1, "psf"), "kPa")).toBeCloseTo(0.0479, 4);
    expect(fromBase(toBase(1, "pcf"), "kN/m³")).toBeCloseTo(0.157, 3);
  });
  test("100 pci = 27.2 MPa/m = 2.77 kg/cm³ (as printed; 27.14 by definition, so the page rounds up)", () => {
    expect(Math.abs(fromBase(toBase(100, "pci"), "MN/m³") - 27.2)).toBeLessThanOrEqual(0.06);
    expect(toBase(100, "pci") / (9.80665 / 1000)).toBeCloseTo(2.77, 2);
  });
  test.each([
    [50, 4, 65],
    [50, 12, 110],
    [100, 6, 140],
    [200, 9, 270],
    [300, 12, 430],
  ])("PCA EB109P: k %s pci under %s in of granular base: %s", (k, inches, printed) =>
    expect(fromBase(subgradeOnBase(toBase(k, "pci"), toBase(inches, "in")), "pci")).toBeCloseTo(printed, 9),
  );
  test("k from CBR is a band of ±20 %, as wide as two published correlations differ", () => {
    const { low, best, high } = subgradeFromCbr(10);
    expect(fromBase(best, "pci")).toBeCloseTo(53.438 * 10 ** 0.5719, 6);
    expect([low / best, high / best]).toEqual([expect.closeTo(0.8), expect.closeTo(1.2)]);
  });
});
