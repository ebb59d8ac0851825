/**
 * What `floorworthy torque` prints of torque and pull, against published numbers:
 * - a public worked example, M12 class 8.8: 82 N·m makes 34.2 kN at K 0.20 and 23 kN at K 0.30 (0.5 in the last digit shown);
 * - J. Speck, Mechanical Fastening, Joining, and Assembly, p. 85: torque for one preload goes with K: 72.7, 60.6, 48.5,
 *   36.3, 24.2 lb-in at K 0.30 to 0.10, so pull for one torque goes with 1/K;
 * - G. Senkiw, ACI SP-130 (1992) 47-60: 60 % (sleeve) and 40 % (lead caulking) after 90 days, means of tests. A fact, not a curve.
 */
import { preloadTerms, torqueSays } from "@floorworthy/assess/upkeep";
import { readJob } from "@floorworthy/job";
import { expect, test } from "vitest";

const termsFor = (anchors: string, units = "si") => {
  const read = readJob(
    `floorworthy: 1\ntitle: t\nunits: ${units}\nlift: { name: L, kind: two-post, anchors: ${anchors} }\n`,
  );
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join("\n"));
  return preloadTerms(read.job);
};
const pull = (terms: ReturnType<typeof termsFor>, K: string): number =>
  terms.find(({ words }) => words.endsWith(`K ${K}`))!.value;

const m12 = termsFor("{ product: { diameter: 12 mm }, torque: 82 N·m }");

test("M12, 82 N·m: 34.2 kN at K 0.20, 23 kN at K 0.30", () => {
  expect(Math.abs(pull(m12, "0.2") - 34.2)).toBeLessThanOrEqual(0.05);
  expect(Math.abs(pull(m12, "0.3") - 23)).toBeLessThanOrEqual(0.5);
});

test.each([
  ["0.3", 72.7],
  ["0.25", 60.6],
  ["0.2", 48.5],
  ["0.1", 24.2],
] as const)("K %s: pull goes with 1/K as Speck's torque (%f lb-in) goes with K", (K, torque) => {
  const ratio = pull(m12, "0.2") / pull(m12, K);
  expect(Math.abs(ratio - torque / 48.5)).toBeLessThanOrEqual((0.05 / 48.5) * (1 + torque / 48.5));
});

test("ninety days: 60 and 40 %, as facts of two kinds of anchors with their source", () => {
  const kept = m12.filter(({ symbol }) => symbol === "F90/F0");
  expect(kept.map(({ value }) => Number(value.toFixed(6)))).toEqual([60, 40]);
  for (const { clause, basis } of kept) {
    expect(clause).toContain("Senkiw");
    expect(basis).toContain("no curve");
  }
});

test("every pull unfolds to its torque and diameter; inch-pound jobs speak lb and lb-ft", () => {
  const terms = termsFor("{ product: { diameter: 3/4 in }, torque: 110 lb-ft }", "inch-pound");
  const one = terms.find(({ symbol }) => symbol === "F")!;
  expect(one.unit).toBe("lb");
  expect(one.from?.map(({ symbol }) => symbol)).toEqual(["T", "D"]);
  expect(one.worked).toMatch(/^110 lb-ft \/ \(0\.14 × 0\.75 in\)$/);
});

test("without torque or thread there is no figure, and what torque says is said all the same", () => {
  expect(termsFor("{ product: { diameter: 12 mm } }")).toEqual([]);
  expect(termsFor("{ product: { diameter: 17 mm }, torque: 82 N·m }")).toEqual([]);
  expect(torqueSays.join(" ")).toContain("nothing of how much the concrete holds");
});
