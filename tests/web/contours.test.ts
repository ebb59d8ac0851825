import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { contourLines, type ValueGrid } from "../../apps/web/src/work/contours.ts";

const gridOf = (n: number, value: (x: number, y: number) => number | undefined): ValueGrid => ({
  rect: { x0: -100, y0: -100, x1: 100, y1: 100 },
  nx: n,
  ny: n,
  values: Array.from({ length: n * n }, (_, i) =>
    value(-100 + (200 * (i % n)) / (n - 1), -100 + (200 * Math.floor(i / n)) / (n - 1)),
  ),
});
const lengthOf = (line: readonly { x: number; y: number }[]): number =>
  line.slice(1).reduce((sum, p, i) => sum + Math.hypot(p.x - line[i]!.x, p.y - line[i]!.y), 0);

describe("lines of equal value", () => {
  test("of a cone are circles: one closed line as long as its circumference", () => {
    const lines = contourLines(
      gridOf(81, (x, y) => Math.hypot(x, y)),
      60,
    );
    expect(lines).toHaveLength(1);
    const [line] = lines;
    expect(lengthOf(line!)).toBeCloseTo(2 * Math.PI * 60, 0);
    expect(line![0]).toEqual(line!.at(-1));
    for (const { x, y } of line!) expect(Math.hypot(x, y)).toBeCloseTo(60, 0);
  });

  test("of a plane is one straight line from edge to edge", () => {
    const lines = contourLines(
      gridOf(11, (x) => x),
      33,
    );
    expect(lines).toHaveLength(1);
    expect(lengthOf(lines[0]!)).toBeCloseTo(200, 6);
    for (const { x } of lines[0]!) expect(x).toBeCloseTo(33, 9);
  });

  test("of a saddle never cross", () => {
    const lines = contourLines(
      gridOf(2, (x, y) => x * y),
      0.5,
    );
    expect(lines).toHaveLength(2);
    // the middle lies below the level, so each line goes round a corner that lies above it
    for (const [a, b] of lines) expect((a!.x + b!.x) * (a!.y + b!.y)).toBeGreaterThan(0);
  });

  test("end where there is no concrete", () => {
    const lines = contourLines(
      gridOf(21, (x, y) => (x > 0 ? undefined : y)),
      5,
    );
    expect(Math.max(...lines.flat().map(({ x }) => x))).toBeLessThanOrEqual(0);
  });

  test("lie between values above and below, whatever the field", () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 5, noNaN: true }), { minLength: 49, maxLength: 49 }),
        fc.double({ min: -4, max: 4, noNaN: true }),
        (values, level) => {
          const grid = { rect: { x0: 0, y0: 0, x1: 6, y1: 6 }, nx: 7, ny: 7, values };
          for (const { x, y } of contourLines(grid, level).flat()) {
            const at = (i: number, j: number) => values[j * 7 + i]!;
            const [i, j] = [Math.floor(x), Math.floor(y)];
            const [k, l] = [Math.ceil(x), Math.ceil(y)];
            const ends = [at(i, j), at(k, l)];
            expect(Math.min(...ends)).toBeLessThanOrEqual(level + 1e-9);
            expect(Math.max(...ends)).toBeGreaterThanOrEqual(level - 1e-9);
          }
        },
      ),
      { numRuns: 60 },
    );
  });
});
