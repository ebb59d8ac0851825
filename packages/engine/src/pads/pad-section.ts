/**
 * Bending and one-way shear of a pad on its own, at the face of the base plate, as a plain or a reinforced footing.
 * Loads are taken as live: 1.6. Our units in, MPa and N·mm out; the clauses are called in theirs.
 */
import {
  flexuralStrengthTension,
  oneWayShear,
  phi,
  phiTensionControlled,
  plainOneWayShear,
  thicknessAgainstSoil,
} from "../codes/aci318-19/index.ts";
import type { HalfPlane, Polygon } from "../geometry/index.ts";
import { type Check, fromBase, shown, type Term, toBase } from "../quantities/index.ts";
import { steelMoment } from "../slabs/index.ts";
import type { GroundPressure } from "./ground-pressure.ts";
import { sectionDemand } from "./section-demand.ts";

const LOAD_FACTOR = 1.6;

/** What a pad is made of. Lengths mm, stresses MPa. */
export interface PadSection {
  readonly thickness: number;
  readonly fc: number;
  /** bottom bars, when they count: area per width mm²/mm, yield, depth from the top */
  readonly steel?: { readonly area: number; readonly fy: number; readonly depth: number };
}

/** Strength of the section over `width` mm: moment N·mm and shear N, each with φ. */
export const sectionStrength = ({ thickness, fc, steel }: PadSection, width: number): { M: Term; V: Term } => {
  const [psi, b, h] = [fromBase(fc, "psi"), fromBase(width, "in"), thicknessAgainstSoil(fromBase(thickness, "in"))];
  const Sm = (b * h * h) / 6;
  const plainM = toBase(phi.plain * flexuralStrengthTension(psi, Sm), "lb-in");
  const plainV = toBase(phi.plain * plainOneWayShear(psi, b, h), "lb");
  const plain = {
    M: term("φMn", "bending strength of the plain section", plainM, "N·mm", {
      clause: "ACI 318-19 14.5.2.1, 14.5.1.7, φ 0.60",
      formula: "0.60 × 5 √f'c b (h − 2)²/6 (lb, in, psi)",
      worked: `0.60 × 5 × √${shown(psi)} × ${shown(b)} × ${shown(h)}²/6`,
    }),
    V: term("φVn", "shear strength of the plain section", plainV, "N", {
      clause: "ACI 318-19 Table 14.5.5.1 (a), φ 0.60",
      formula: "0.60 × 4/3 √f'c b (h − 2) (lb, in, psi)",
      worked: `0.60 × 4/3 × √${shown(psi)} × ${shown(b)} × ${shown(h)}`,
    }),
  };
  if (!steel) return plain;
  const d = fromBase(steel.depth, "in");
  const rhoW = steel.area / steel.depth;
  const steelM = phiTensionControlled * steelMoment(steel, fc) * width;
  const steelV = toBase(phi.shear * oneWayShear(psi, { bw: b, d, rhoW }), "lb");
  return {
    M:
      steelM <= plainM
        ? plain.M
        : term("φMn", "bending strength with the bottom bars", steelM, "N·mm", {
            clause: "ACI 318-19 22.2, φ 0.90",
            formula: "0.90 As fy (d − As fy / 1.7 f'c) b",
            worked: `As ${shown(steel.area)} mm²/mm, fy ${shown(steel.fy)} MPa, d ${shown(steel.depth)} mm`,
          }),
    V:
      steelV <= plainV
        ? plain.V
        : term("φVc", "shear strength with the bottom bars", steelV, "N", {
            clause: "ACI 318-19 Table 22.5.5.1 (c), φ 0.75",
            formula: "0.75 × 8 λs ρw^⅓ √f'c b d (lb, in, psi)",
            worked: `ρw ${shown(rhoW)}, d ${shown(d)} in`,
          }),
  };
};

/**
 * Over the four faces of the base plate the worst bending, and d (plain: h) away from them the worst shear.
 * @param face - the base plate's box in plan
 * @param weight - of the pad per area, MPa
 */
export const padSectionChecks = (
  outline: Polygon,
  pressure: GroundPressure,
  section: PadSection,
  weight: number,
  face: { readonly x0: number; readonly y0: number; readonly x1: number; readonly y1: number },
): readonly Check[] => {
  const away = section.steel ? section.steel.depth : section.thickness;
  const box = boxOf(outline);
  const cuts = (s: number): { half: HalfPlane; width: number; where: string }[] => [
    { half: { nx: 1, ny: 0, c: face.x0 - s }, width: box.y1 - box.y0, where: "left of the plate" },
    { half: { nx: -1, ny: 0, c: -(face.x1 + s) }, width: box.y1 - box.y0, where: "right of the plate" },
    { half: { nx: 0, ny: 1, c: face.y0 - s }, width: box.x1 - box.x0, where: "behind the plate" },
    { half: { nx: 0, ny: -1, c: -(face.y1 + s) }, width: box.x1 - box.x0, where: "before the plate" },
  ];
  const worst = (s: number, of: "M" | "V"): Check =>
    cuts(s)
      .map(({ half, width, where }) => {
        const demand = LOAD_FACTOR * Math.abs(sectionDemand(outline, pressure, weight, half)[of]);
        return checkOf(of, demand, sectionStrength(section, width)[of], where);
      })
      .reduce((a, b) => (b.ratio > a.ratio ? b : a));
  return [worst(0, "M"), worst(away, "V")];
};

const checkOf = (of: "M" | "V", demand: number, strength: Term, where: string): Check => ({
  id: of === "M" ? "pad-bending" : "pad-shear",
  title: of === "M" ? "Bending of the pad at the base plate" : "Shear of the pad beside the base plate",
  demand: term(
    of === "M" ? "Mu" : "Vu",
    `${of === "M" ? "moment" : "shear"} from the ground pressure beyond, less the pad's weight, times 1.6`,
    demand,
    of === "M" ? "N·mm" : "N",
    { clause: STATICS, formula: of === "M" ? "1.6 ∫ (q − γh) s dA" : "1.6 ∫ (q − γh) dA" },
  ),
  capacity: strength,
  ratio: demand === 0 ? 0 : strength.value > 0 ? demand / strength.value : Number.POSITIVE_INFINITY,
  clause: strength.clause ?? STATICS,
  governs: where,
});

const STATICS = "statics of a rigid base; ACI 318-19 5.3.1";

const term = (symbol: string, words: string, value: number, unit: "N·mm" | "N", rest: Partial<Term>): Term => ({
  symbol,
  words,
  value,
  unit,
  ...rest,
});

const boxOf = (ring: Polygon) => ({
  x0: Math.min(...ring.map((p) => p.x)),
  y0: Math.min(...ring.map((p) => p.y)),
  x1: Math.max(...ring.map((p) => p.x)),
  y1: Math.max(...ring.map((p) => p.y)),
});
