import { readFileSync } from "node:fs";
import { writtenTree } from "@floorworthy/job/listing";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { planLabels } from "../../apps/web/src/plan/hand/labels.ts";
import { thingsOf } from "../../apps/web/src/plan/hand/things.ts";
import { lettersOf, viewAround } from "../../apps/web/src/plan/hand/view.ts";
import { apart } from "../../apps/web/src/plan/layers/apart.ts";

const example = (name: string): string => readFileSync(new URL(`../../examples/${name}.yaml`, import.meta.url), "utf8");
const things = (name: string) => thingsOf(writtenTree(example(name)));

const boxes = (labels: ReturnType<typeof planLabels>, letters: number) =>
  labels.map(({ text, at, runs }) => {
    const [a, b] = [text.length * 0.28 * letters, 0.5 * letters];
    const [dx, dy] = runs === "across" ? [a, b] : [b, a];
    return { x0: at.x - dx, y0: at.y - dy, x1: at.x + dx, y1: at.y + dy };
  });

describe("names on the plan", () => {
  test("walls, joints and doors are named", () => {
    const names = planLabels(things("saw-cut-in-the-way"), 150).map(({ text }) => text);
    expect(names).toEqual(
      expect.arrayContaining(["cross saw cut", "long saw cut", "back wall", "left wall", "garage door"]),
    );
  });

  test("no name stands over another, at any size of letters", () => {
    for (const name of ["saw-cut-in-the-way", "new-heated-shop", "records-in-hand", "nine-cold-days"])
      fc.assert(
        fc.property(fc.double({ min: 20, max: 900, noNaN: true }), (letters) => {
          const all = boxes(planLabels(things(name), letters), letters);
          const clashes = all.flatMap((a, i) =>
            all.slice(i + 1).filter((b) => a.x0 < b.x1 && b.x0 < a.x1 && a.y0 < b.y1 && b.y0 < a.y1),
          );
          expect(clashes).toEqual([]);
        }),
        { numRuns: 25 },
      );
  });

  test("where letters are as large as the bay most names are left out rather than piled up", () => {
    expect(planLabels(things("saw-cut-in-the-way"), 4000).length).toBeLessThan(3);
  });

  test("figures too near to each other are left out, the first kept", () => {
    const at = (x: number, words: string) => ({ at: { x, y: 0 }, words });
    expect(apart([at(0, "100"), at(10, "101"), at(900, "102")], 100).map(({ words }) => words)).toEqual(["100", "102"]);
    expect(apart([at(0, "100")], 100, [{ x: 5, y: 5 }])).toEqual([]);
  });
});

describe("what is in sight", () => {
  const sizes = fc.record({ width: fc.integer({ min: 200, max: 1600 }), height: fc.integer({ min: 160, max: 1200 }) });
  const bays = fc.record({
    width: fc.integer({ min: 2000, max: 30_000 }),
    depth: fc.integer({ min: 2000, max: 30_000 }),
  });

  test("the whole bay with room for its dimensions, in the shape of the board", () => {
    fc.assert(
      fc.property(sizes, bays, (size, { width, depth }) => {
        const view = viewAround({ x0: 0, y0: 0, x1: width, y1: depth }, size);
        const letters = lettersOf(view, size);
        expect(view.x).toBeLessThan(-4.5 * letters);
        expect(view.y).toBeLessThan(-4.5 * letters);
        expect(view.x + view.width).toBeGreaterThan(width + letters);
        expect(view.y + view.height).toBeGreaterThan(depth + letters);
        expect(view.width / view.height).toBeCloseTo(size.width / size.height, 6);
      }),
    );
  });
});
