/**
 * Hetenyi M., Beams on Elastic Foundation (1946), Table I and ch. II; Boresi A.P. & Schmidt R.J., Advanced Mechanics of
 * Materials, 6th ed. (2003), Examples 10.1 and 10.2; Weitsman Y., J. Appl. Mech. 37 (1970). Table and examples from
 * memory, each reproduces by calculation; tolerance = half the last printed digit.
 */

import {
  type BeamOnGround,
  beamLambda,
  finiteBeam,
  hetenyiA,
  hetenyiB,
  hetenyiC,
  hetenyiD,
  infiniteUnderLoad,
  semiInfinite,
} from "@floorworthy/engine/slabs";
import { describe, expect, test } from "vitest";

const near = (value: number, printed: number, half: number) =>
  expect(Math.abs(value - printed)).toBeLessThanOrEqual(half * 1.0001);

describe("Table I", () => {
  test.each([
    [1, 0.5083, 0.3096, -0.1108, 0.1988],
    [2, 0.0667, 0.1231, -0.1794, -0.0563],
    [3, -0.0423, 0.007, -0.0563, -0.0493],
  ])("x = %s: A %s, B %s, C %s, D %s", (x, A, B, C, D) => {
    near(hetenyiA(x), A, 0.00005);
    near(hetenyiB(x), B, 0.00005);
    near(hetenyiC(x), C, 0.00005);
    near(hetenyiD(x), D, 0.00005);
  });
});

describe("landmarks with unit load, λ = K = 1", () => {
  const beam: BeamOnGround = { EI: 0.25, K: 1 };
  test("infinite: y = Pλ/2K, M = P/4λ, first zero at 3π/4, uplift −e^−π of the deflection under the load", () => {
    near(infiniteUnderLoad(beam, 1, 0).y, 0.5, 1e-12);
    near(infiniteUnderLoad(beam, 1, 0).M, 0.25, 1e-12);
    near(infiniteUnderLoad(beam, 1, (3 * Math.PI) / 4).y, 0, 1e-12);
    near(infiniteUnderLoad(beam, 1, Math.PI).y / 0.5, -0.0432, 0.00005);
  });
  test("semi-infinite: end load y = 2Pλ/K, |M| = 0.3224 P/λ at π/4λ; end couple |y| = 2M0λ²/K", () => {
    near(semiInfinite(beam, 1, 0, 0).y, 2, 1e-12);
    near(Math.abs(semiInfinite(beam, 1, 0, Math.PI / 4).M), 0.3224, 0.00005);
    near(Math.abs(semiInfinite(beam, 0, 1, 0).y), 2, 1e-12);
  });
  test("tensionless bed, Weitsman: half contact π/2, y = 0.54517, M = 0.27258: the free beam of that length", () => {
    const free = finiteBeam(beam, Math.PI, [{ at: Math.PI / 2, force: 1, couple: 0 }]);
    near(free(Math.PI / 2).y, 0.545165705363684, 1e-12);
    near(free(Math.PI / 2).M, 0.272582852681842, 1e-12);
    near(free(0).y, 0, 1e-12);
  });
});

test("Boresi & Schmidt Example 10.1, rail: β 0.000830 /mm, y 5.04 mm, M 51.21 kN·m, σ 137.5 MPa", () => {
  const rail: BeamOnGround = { EI: 200e3 * 36.9e6, K: 14 };
  near(beamLambda(rail), 0.00083, 0.0000005);
  near(infiniteUnderLoad(rail, 170e3, 0).y, 5.04, 0.005);
  const { M } = infiniteUnderLoad(rail, 170e3, 0);
  near(M / 1e6, 51.21, 51.21 * 0.001); // the book carries β = 0.000830
  near((M * 99.1) / 36.9e6, 137.5, 137.5 * 0.001);
});

test("Boresi & Schmidt Example 10.2, seven springs smeared: β 0.000614 /mm, y 36.8 mm, M 4.886 kN·m, σ 99.7 MPa", () => {
  const beam: BeamOnGround = { EI: 72e3 * 2.45e6, K: 110 / 1100 };
  near(beamLambda(beam), 0.000614, 0.0000005);
  near(infiniteUnderLoad(beam, 12e3, 0).y, 36.8, 36.8 * 0.002); // the book carries β = 0.000614
  const { M } = infiniteUnderLoad(beam, 12e3, 0);
  near(M / 1e6, 4.886, 4.886 * 0.001);
  near((M * 50) / 2.45e6, 99.7, 99.7 * 0.001);
});
