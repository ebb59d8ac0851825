/**
 * The plate against a general-purpose program: Dhondt G. & Wittig K., CalculiX (ccx 2.20), 8-node shells S8R on a spring
 * at every node, a two-column bay with thickened pads. Deck and result are kept in tests/kept/calculix; where ccx is
 * installed it is run again on the kept deck, otherwise the kept result is used and the test says so.
 *
 * Targets: deflection within 3 %, governing stress within 5 %. What is left is the shear that shells have and a thin plate
 * leaves out: with shells four times thinner and the same stiffness it shrinks to under 1 % (difference.json).
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { loads } from "../../bench/calculix/bay.ts";
import { cases, mesh } from "../../bench/calculix/cases.ts";
import { compare, type Difference, type Kept, keep, liftedNodes, plateResult } from "../../bench/calculix/compare.ts";
import { hasCalculix, runCalculix } from "../../bench/calculix/run.ts";

const folder = new URL("../kept/calculix/", import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, folder), "utf8");
const there = hasCalculix();
if (!there)
  console.log("ccx is not installed: the plate is compared with the kept CalculiX result, not with a fresh run.");

const ratio = ({ shells, plate }: { shells: number; plate: number }): number => Math.abs(plate / shells - 1);

describe.each(cases)("$name, $support", ({ name, floor, support }) => {
  const kept: Kept = JSON.parse(read(`${name}.result.json`));
  const plate = plateResult(floor, loads, support);

  test("the kept result: deflection within 3 % and governing stress within 5 %", () => {
    const d = compare(floor, kept, plate);
    expect(Math.abs(d.deflection.plateWithShear / d.deflection.shells - 1)).toBeLessThan(0.03);
    expect(Math.abs(d.deflection.plate / d.deflection.shells - 1)).toBeLessThan(0.03);
    expect(d.worstDeflection).toBeLessThan(0.03);
    expect(ratio(d.bottom)).toBeLessThan(0.05);
    expect(ratio(d.thinSlab)).toBeLessThan(0.05);
  });

  test.runIf(there)("a fresh run of the kept deck gives the kept result, and its springs only push", () => {
    const deck = read(`${name}.inp`);
    const result = runCalculix(deck);
    const fresh = keep(floor, mesh, result);
    const largest = Math.max(...kept.nodes.map((n) => n.w));
    const apart = Math.max(...kept.nodes.map((n, i) => Math.abs(n.w - fresh.nodes[i]!.w)));
    expect(apart).toBeLessThan(1e-4 * largest);
    const d = compare(floor, fresh, plate);
    expect(ratio(d.bottom)).toBeLessThan(0.05);
    if (support === "pushes-only") {
      const springs =
        mesh.nodes.length - (deck.split("*CLOAD")[1]?.split("*EL PRINT")[0]?.trim().split("\n").length ?? 0);
      expect(mesh.nodes.length - liftedNodes(floor, mesh, result).size).toBe(springs);
    }
  });
});

test("the difference goes as the shells get thinner: it is the shear", () => {
  const { differences }: { differences: Record<string, Difference> } = JSON.parse(read("difference.json"));
  const [thick, half, quarter] = ["bay", "bay, shells 2 times thinner", "bay, shells 4 times thinner"].map(
    (name) => differences[name]!,
  );
  expect(ratio(quarter!.bottom)).toBeLessThan(0.01);
  expect(ratio(quarter!.top)).toBeLessThan(0.02);
  expect(ratio(half!.bottom)).toBeLessThan(ratio(thick!.bottom));
  expect(ratio(half!.top)).toBeLessThan(ratio(thick!.top));
  expect(ratio({ shells: quarter!.deflection.shells, plate: quarter!.deflection.plate })).toBeLessThan(0.005);
});
