/**
 * ACI 318-19 chapter 17, tables and limits. The book was not at hand: unless marked otherwise the values are from memory
 * (docs/sources/anchors.md), so this file guards them against slips rather than proves them.
 */
import {
  alphaS,
  basicBreakoutShear,
  basicBreakoutShearWelded,
  breakoutCoefficient,
  breakoutShear,
  breakoutTension,
  categoryFromReliability,
  countedSteelStrength,
  countedStrength,
  criticalEdge,
  criticalSpacing,
  depthBetweenEdges,
  depthLimitInThinMember,
  edgeDistanceInNarrowMember,
  groutPadFactor,
  interaction,
  interactionByPowers,
  lightweightFactorForAnchors,
  loadBearingLength,
  minimumEdge,
  minimumSpacing,
  phiBreakout,
  phiPullout,
  phiSteel,
  projectedShearArea,
  pryoutCoefficient,
  psiCrackingPullout,
  psiCrackingShear,
  psiCrackingTension,
  psiEccentricityShear,
  psiEccentricityTension,
  psiEdgeShear,
  psiEdgeTension,
  psiSplitting,
  psiThickness,
  pullout,
  sideFaceBlowout,
  sideFaceBlowoutOfRow,
  steelShear,
  threadedArea,
} from "@floorworthy/engine/codes/aci318-19";
import { describe, expect, test } from "vitest";

describe("17.2 to 17.4, from memory", () => {
  test("λa: cast-in and undercut λ, expansion 0.8 λ, normal weight 1", () => {
    expect(lightweightFactorForAnchors("cast-in", 0.75)).toBe(0.75);
    expect(lightweightFactorForAnchors("expansion", 0.75)).toBeCloseTo(0.6, 12);
    expect(lightweightFactorForAnchors("expansion", 1)).toBe(1);
  });
  test("f'c counted up to 8,000 psi post-installed, 10,000 psi cast-in", () => {
    expect(countedStrength("expansion", 9000)).toBe(8000);
    expect(countedStrength("cast-in", 12_000)).toBe(10_000);
  });
});

describe("17.5", () => {
  test("critical spacing 3 hef, 3 ca1: Table 17.5.1.3.1", () => expect(criticalSpacing(4)).toBe(12));
  test("steel: ductile 0.75 tension, 0.65 shear; brittle 0.65, 0.60", () => {
    expect([phiSteel("tension", "ductile"), phiSteel("shear", "ductile")]).toEqual([0.75, 0.65]);
    expect([phiSteel("tension", "brittle"), phiSteel("shear", "brittle")]).toEqual([0.65, 0.6]);
  });
  test("breakout in tension without supplementary reinforcement: cast-in 0.70, category 1/2/3 0.65/0.55/0.45", () =>
    expect((["cast-in", 1, 2, 3] as const).map((k) => phiBreakout("tension", k, "none"))).toEqual([
      0.7, 0.65, 0.55, 0.45,
    ]));
  test("breakout in tension with it: 0.75, 0.75/0.65/0.55", () =>
    expect((["cast-in", 1, 2, 3] as const).map((k) => phiBreakout("tension", k, "present"))).toEqual([
      0.75, 0.75, 0.65, 0.55,
    ]));
  test("breakout in shear 0.70 without, 0.75 with", () =>
    expect([phiBreakout("shear", 3, "none"), phiBreakout("shear", 3, "present")]).toEqual([0.7, 0.75]));
  test("pull-out: cast-in 0.70, category 1/2/3 0.65/0.55/0.45; pry-out 0.70", () => {
    expect((["cast-in", 1, 2, 3] as const).map((k) => phiPullout("tension", k))).toEqual([0.7, 0.65, 0.55, 0.45]);
    expect(phiPullout("shear", 2)).toBe(0.7);
  });
  test("ACI 355.2-04, as printed in an ACI presentation: category 1 from 80 %, 2 from 70 %, 3 from 60 %", () =>
    expect([80, 79.9, 70, 60, 59.9].map(categoryFromReliability)).toEqual([1, 2, 2, 3, "unqualified"]));
});

describe("17.6", () => {
  test("futa at most 1.9 fya and 125,000 psi", () =>
    expect([countedSteelStrength(150_000), countedSteelStrength(120_000, 50_000)]).toEqual([125_000, 95_000]));
  test("Ase of 1/2-13 thread 0.142 in² (ASME B1.1 stress area, AISC Manual Table 7-17)", () =>
    expect(threadedArea(0.5, 13)).toBeCloseTo(0.142, 3));
  test("kc 24 cast-in, 17 post-installed", () =>
    expect([breakoutCoefficient("cast-in"), breakoutCoefficient("post-installed")]).toEqual([24, 17]));
  test("three edges: hef counts max(ca,max/1.5, s/3); two edges leave it", () => {
    expect(depthBetweenEdges(10, [3, 4, 6], 9)).toBe(4);
    expect(depthBetweenEdges(10, [3, 4, 6], 15)).toBe(5);
    expect(depthBetweenEdges(10, [3, 6], 9)).toBe(10);
  });
  test("ψec 1/(1 + e/(1.5 hef)), the older 1/(1 + 2e/(3 hef)) being the same", () => {
    expect(psiEccentricityTension(3, 4)).toBeCloseTo(1 / (1 + (2 * 3) / (3 * 4)), 12);
    expect(psiEccentricityTension(-3, 4)).toBe(psiEccentricityTension(3, 4));
  });
  test("ψed 0.7 at the edge, 1 from 1.5 hef", () =>
    expect([psiEdgeTension(0, 4), psiEdgeTension(3, 4), psiEdgeTension(6, 4), psiEdgeTension(9, 4)]).toEqual([
      0.7, 0.85, 1, 1,
    ]));
  test("ψc 1.25 cast-in, 1.4 post-installed, 1 with the product's own k", () =>
    expect(
      (["cast-in", "post-installed", "product-k"] as const).map((k) => psiCrackingTension("uncracked", k)),
    ).toEqual([1.25, 1.4, 1]));
  test("ψcp max(ca,min, 1.5 hef)/cac", () => {
    expect(psiSplitting(8, 16, 4)).toBe(0.5);
    expect(psiSplitting(2, 16, 4)).toBe(0.375);
    expect(psiSplitting(20, 16, 4)).toBe(1);
  });
  test("pull-out: ψc,P 1.4 for cast-in in uncracked concrete", () => {
    expect(pullout(psiCrackingPullout("uncracked", "cast-in"), 1000)).toBe(1400);
    expect(psiCrackingPullout("cracked", "cast-in")).toBe(1);
    expect(psiCrackingPullout("uncracked", "post-installed")).toBe(1);
  });
  test("side face 160 ca1 √Abrg √f'c; (1 + ca2/ca1)/4 at a corner; 1 + s/(6 ca1) for a row", () => {
    expect(sideFaceBlowout(2, 1, 2500, 100)).toBe(16_000);
    expect(sideFaceBlowout(2, 1, 2500, 4)).toBe(12_000);
    expect(sideFaceBlowout(2, 1, 2500, 1)).toBe(8_000);
    expect(sideFaceBlowout(2, 1, 2500, 6.05)).toBe(16_000);
    expect(sideFaceBlowoutOfRow(16_000, 6, 2)).toBe(24_000);
  });
});

describe("17.7 and 17.8, from memory", () => {
  test("Vsa 0.6 Ase futa, studs Ase futa; 0.8 over grout", () => {
    expect(steelShear("post-installed", 0.2, 100_000)).toBeCloseTo(12_000, 9);
    expect(steelShear("headed-stud", 0.2, 100_000)).toBe(20_000);
    expect(groutPadFactor).toBe(0.8);
  });
  test("ca1 in a narrow and thin member", () => {
    expect(edgeDistanceInNarrowMember(12, [7, 5], 8, 9)).toBeCloseTo(16 / 3, 12);
    expect(edgeDistanceInNarrowMember(12, [7, 5], 8, 30)).toBe(10);
    expect(edgeDistanceInNarrowMember(12, [9, 5], 8, 9)).toBe(6);
    expect(edgeDistanceInNarrowMember(12, [20, 5], 8, 9)).toBe(12);
    expect(edgeDistanceInNarrowMember(12, [18.1, 5], 8, 9)).toBe(12);
    expect(edgeDistanceInNarrowMember(12, [7, 5], 18.1, 9)).toBe(12);
  });
  test("A_Vc as deep as 1.5 ca1 or the slab; le at most 8 da", () => {
    expect([projectedShearArea(4, 12, 10), projectedShearArea(4, 12, 5)]).toEqual([72, 60]);
    expect([loadBearingLength(4, 0.375), loadBearingLength(4, 0.75)]).toEqual([3, 4]);
  });
  test("Vb at most 9 √f'c ca1^1.5, which governs large anchors, welded or not", () => {
    const large = { da: 2, le: 16, ca1: 4 };
    expect(basicBreakoutShear(large, 2500)).toBe(3600);
    expect(basicBreakoutShearWelded(large, 2500)).toBe(3600);
  });
  test("one anchor has no ψec; every other factor multiplies", () => {
    expect(breakoutTension(2, { psiEd: 0.5, psiC: 1.4, psiCp: 0.5 }, 1000)).toBeCloseTo(700, 9);
    expect(breakoutTension(2, { psiEc: 0.5, psiEd: 0.5, psiC: 1.4, psiCp: 0.5 }, 1000)).toBeCloseTo(350, 9);
    expect(breakoutShear(2, { psiEd: 0.5, psiC: 1.4, psiH: 1.5 }, 1000)).toBeCloseTo(2100, 9);
  });
  test("ψh,V √(1.5 ca1/ha), 1 in a deep member", () =>
    expect([psiThickness(6, 4), psiThickness(2, 9)]).toEqual([1.5, 1]));
  test("ψec,V, ψed,V, ψc,V", () => {
    expect(psiEccentricityShear(3, 4)).toBeCloseTo(2 / 3, 12);
    expect([psiEdgeShear(0, 4), psiEdgeShear(3, 4), psiEdgeShear(6, 4)]).toEqual([0.7, 0.85, 1]);
    expect([psiCrackingShear("uncracked"), psiCrackingShear("cracked")]).toEqual([1.4, 1]);
    expect([psiCrackingShear("cracked", "no-4-bar"), psiCrackingShear("cracked", "no-4-bar-in-stirrups")]).toEqual([
      1.2, 1.4,
    ]);
  });
  test("kcp 1 below 2.5 in, else 2", () => expect([2.49, 2.5].map(pryoutCoefficient)).toEqual([1, 2]));
  test("interaction: one alone up to 0.2 of the other, else the sum against 1.2", () => {
    expect(interaction(0.9, 0.2)).toEqual({ asked: 0.9, allowed: 1 });
    expect(interaction(0.15, 0.8)).toEqual({ asked: 0.8, allowed: 1 });
    expect([interaction(0.9, 0.201).allowed, interaction(0.201, 0.9).allowed]).toEqual([1.2, 1.2]);
    expect(interaction(0.2, 0.9).allowed).toBe(1);
    expect(interaction(0.5, 0.25)).toEqual({ asked: 0.75, allowed: 1.2 });
    expect(interactionByPowers(1, 0)).toBe(1);
    expect(interactionByPowers(0.125, 0.125)).toBeCloseTo(2 / 32, 12);
  });
});

describe("17.9: Table 17.9.2(a) spacing read in the source, the rest from memory", () => {
  test("3/4 in torque-controlled anchor: spacing 4.5 in, edge 6.0 in", () => {
    expect(minimumSpacing("expansion", 0.75, 4)).toBe(4.5);
    expect(minimumEdge("expansion", 0.75)).toBe(6);
  });
  test("spacing: cast-in 4 da, torqued 6 da; screw at least 0.6 hef", () => {
    expect([minimumSpacing("cast-in", 1, 9, "not-torqued"), minimumSpacing("cast-in", 1, 9)]).toEqual([4, 6]);
    expect([minimumSpacing("screw", 0.5, 4), minimumSpacing("screw", 0.5, 10)]).toEqual([3, 6]);
  });
  test("edge: displacement-controlled 10 da; screw, undercut, adhesive 6 da", () => {
    expect(minimumEdge("expansion", 1, "displacement-controlled")).toBe(10);
    expect((["screw", "undercut", "adhesive"] as const).map((kind) => minimumEdge(kind, 1))).toEqual([6, 6, 6]);
  });
  test("hef in a thin slab: max(2/3 ha, ha − 4 in); no limit for cast-in and adhesive", () => {
    expect([6, 9, 15].map((ha) => depthLimitInThinMember("expansion", ha))).toEqual([4, 6, 11]);
    expect(depthLimitInThinMember("adhesive", 6)).toBe(Number.POSITIVE_INFINITY);
  });
  test("cac: 4 hef expansion and screw, 2.5 undercut, 2 adhesive", () =>
    expect(
      (["expansion", "screw", "undercut", "adhesive", "cast-in"] as const).map((kind) => criticalEdge(kind, 2)),
    ).toEqual([8, 8, 5, 4, 3]));
});

test("αs 40 interior, 30 edge, 20 corner (22.6.5.3)", () =>
  expect((["interior", "edge", "corner"] as const).map(alphaS)).toEqual([40, 30, 20]));
