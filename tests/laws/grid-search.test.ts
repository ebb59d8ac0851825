/** The search for the cheapest design against trying every one, with a made-up judge; and its fallback. */
import { type Judged, searchGrid } from "@floorworthy/assess/pad";
import fc from "fast-check";
import { expect, test } from "vitest";

const run = (task: Parameters<typeof searchGrid>[0]) => {
  const search = searchGrid(task);
  for (let step = search.next(); ; step = search.next()) if (step.done) return step.value;
};

const exhaustive = (
  counts: readonly [number, number, number],
  cost: (i: number, j: number, k: number) => number,
  judge: (i: number, j: number, k: number) => Judged,
) => {
  let best = Number.POSITIVE_INFINITY;
  for (let i = 0; i < counts[0]; i++)
    for (let j = 0; j < counts[1]; j++)
      for (let k = 0; k < counts[2]; k++) if (judge(i, j, k).meets) best = Math.min(best, cost(i, j, k));
  return best;
};

const unit = fc.double({ min: 0, max: 1, noNaN: true });

test("200 random small cases: as cheap as trying all, with far fewer judgements", () => {
  let [judged, all] = [0, 0];
  fc.assert(
    fc.property(
      fc.tuple(fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 7 }), fc.integer({ min: 1, max: 9 })),
      fc.tuple(unit, unit, unit, unit, unit, unit, unit, unit),
      (counts, [ca, cb, cd, wa, wb, wd, asked, thin]) => {
        // a price with a jump in it (a fee that falls away) and two demands: the pad itself, the thin slab beside it
        const cost = (i: number, j: number, k: number): number => {
          const volume = (1 + i) * (1 + j) * (1 + k);
          return volume * (0.1 + cd) + (1 + i) * ca + (1 + j) * cb + (volume < 60 ? 20 : 0);
        };
        const judge = (i: number, j: number, k: number): Judged => {
          if (wa * i + wb * j + wd * k < 6 * asked) return { meets: false, mendedBy: "larger" };
          if (k > 3 + 2 * (i + j) * thin) return { meets: false, mendedBy: "shallower" };
          return { meets: true };
        };
        const found = run({ counts, cost, judge });
        judged += found.judgements;
        all += counts[0] * counts[1] * counts[2];
        expect(found.best?.cost ?? Number.POSITIVE_INFINITY).toBeCloseTo(exhaustive(counts, cost, judge), 9);
      },
    ),
    { numRuns: 200 },
  );
  expect(judged).toBeLessThan(0.5 * all);
});

test("where the boxes do not hold, an audit sees it and the rest is judged one by one", () => {
  // cheap designs hold, middling ones do not: nothing is monotone
  const judge = (_i: number, _j: number, k: number): Judged =>
    k === 1 || k === 7 ? { meets: true } : { meets: false, mendedBy: "larger" };
  const cost = (i: number, j: number, k: number): number => 100 * k + i + j;
  const task = { counts: [3, 3, 9] as const, cost, judge };
  const found = run({ ...task, audits: 40 });
  expect([found.way, found.best?.cost]).toEqual(["one by one", 100]);
  expect(run({ ...task, audits: 40, atMost: 0 }).way).toBe("unproved");
});

test("a grid on which nothing holds has no best; one with no design at all is not judged", () => {
  const none = run({
    counts: [4, 4, 4],
    cost: (i, j, k) => i + j + k,
    judge: () => ({ meets: false, mendedBy: "larger" }),
  });
  expect([none.best, none.judgements]).toEqual([undefined, 1]);
  expect(
    run({ counts: [2, 2, 2], cost: () => Number.POSITIVE_INFINITY, judge: () => ({ meets: true }) }).judgements,
  ).toBe(0);
});
