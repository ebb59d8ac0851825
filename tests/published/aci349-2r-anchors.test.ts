/**
 * ACI 349.2R-07, Guide to the Concrete Capacity Design (CCD) Method: Embedment Design Examples. Printed numbers as quoted
 * by a document that was read. The examples use the φ of ACI 349 (0.80 and 0.75 steel, 0.85 concrete for ductility),
 * which are written here, beside the nominal strengths of the engine.
 */
import {
  basicBreakoutShearWelded,
  basicBreakoutTension,
  basicBreakoutTensionDeep,
  loadBearingLength,
  pryout,
  psiEdgeTension,
  pulloutOfHead,
  steelShear,
  steelTension,
} from "@floorworthy/engine/codes/aci318-19";
import { toBase } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

/** Half a unit of the last printed digit, or the relative tolerance given with the value. */
const near = (actual: number, printed: number, tolRel: number): void =>
  expect(Math.abs(actual / printed - 1), `${actual} against ${printed}`).toBeLessThanOrEqual(tolRel);

const halfInchStud = (Math.PI / 4) * 0.5 ** 2;

describe("Example A1: 1/2 in stud, fut 65 ksi, hef 4.69 in, f'c 4000 psi, ca 12 in", () => {
  const Nsa = steelTension(halfInchStud, 65_000);
  const Ncb = basicBreakoutTension(24, 4000, 4.69);
  const Npn = pulloutOfHead(0.59, 4000);
  test("Nsa 12.7627 k", () => near(Nsa / 1000, 12.7627, 3.92e-6));
  test("Nb = Ncb 15.4170 k: the edge at 12 in is out of reach", () => {
    near(Ncb / 1000, 15.417, 3.25e-6);
    expect(psiEdgeTension(12, 4.69)).toBe(1);
  });
  test("Npn = 8 Abrg f'c 18.88 k", () => near(Npn / 1000, 18.88, 0.000265));
  test("0.85 min(Ncb, Npn) 13.10446 k", () => near((0.85 * Math.min(Ncb, Npn)) / 1000, 13.10446, 2e-6));
  test("0.8 Nsa 10.21018 k", () => near((0.8 * Nsa) / 1000, 10.21018, 4.9e-7));
});

describe("Example A2: 1/2 in stud welded to its plate, hef 3.06 in, shear toward an edge at 10 in", () => {
  const Vsa = steelShear("headed-stud", halfInchStud, 65_000);
  const le = loadBearingLength(3.06, 0.5);
  const Vcp = pryout(3.06, basicBreakoutTension(24, 4000, 3.06));
  test("Vsa = A fut 12.7627 k", () => near(Vsa / 1000, 12.7627, 3.92e-6));
  test("Vcb 16.2538 k with le = hef", () =>
    near(basicBreakoutShearWelded({ da: 0.5, le, ca1: 10 }, 4000) / 1000, 16.2538, 3.08e-6));
  test("Vcp = 2 Ncb 16.25 k", () => near(Vcp / 1000, 16.25, 0.000308));
  test("Npn 18.848 k", () => near(pulloutOfHead(0.589, 4000) / 1000, 18.848, 2.66e-5));
  test("0.85 min 13.8125 k", () => near((0.85 * Vcp) / 1000, 13.8125, 0.0002));
  test("0.75 Vsa 9.57204 k", () => near((0.75 * Vsa) / 1000, 9.57204, 5.23e-7));
});

describe("Example A4: 1 1/8 in bolt, 105 ksi grade, hef 17.57 in, washer 2.25 in square (printed in SI)", () => {
  const kN = (lb: number): number => toBase(lb, "lb") / 1000;
  test("Ase 492.433 mm²", () => near(toBase(0.763, "in²"), 492.433, 0.0006));
  test("Nsa 424.4776 kN", () => near(kN(steelTension(0.763, 125_000)), 424.4776, 0.0006));
  test("Ncb = 16 √f'c hef^(5/3) 534.5107 kN", () => near(kN(basicBreakoutTensionDeep(4000, 17.57)), 534.5107, 0.0006));
  test("Np with washer 579.1201 kN", () =>
    near(kN(pulloutOfHead(2.25 ** 2 - (Math.PI / 4) * 1.125 ** 2, 4000)), 579.1201, 0.0006));
});
