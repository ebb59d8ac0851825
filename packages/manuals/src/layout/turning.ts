import type { Box, Direction, GlyphPage, GlyphRun } from "../glyphs/index.ts";

/** Places read along the text (u to its right, v down its lines) and back to the page (x, y). */
export interface Turning {
  readonly toReading: (x: number, y: number) => { readonly u: number; readonly v: number };
  readonly toPage: (cover: Box) => Box;
  readonly width: number;
}

export const turningOf = (
  direction: Direction,
  { width: w, height: h }: Pick<GlyphPage, "width" | "height">,
): Turning => {
  if (direction === 90)
    return {
      width: h,
      toReading: (x, y) => ({ u: y, v: w - x }),
      toPage: (b) => ({ x: w - b.y - b.height, y: b.x, width: b.height, height: b.width }),
    };
  if (direction === 270)
    return {
      width: h,
      toReading: (x, y) => ({ u: h - y, v: x }),
      toPage: (b) => ({ x: b.y, y: h - b.x - b.width, width: b.height, height: b.width }),
    };
  if (direction === 180)
    return {
      width: w,
      toReading: (x, y) => ({ u: w - x, v: h - y }),
      toPage: (b) => ({ x: w - b.x - b.width, y: h - b.y - b.height, width: b.width, height: b.height }),
    };
  return { width: w, toReading: (x, y) => ({ u: x, v: y }), toPage: (b) => b };
};

/** The runs of a page by the way they run, upright ones first. */
export const byDirection = (runs: readonly GlyphRun[]): readonly (readonly [Direction, readonly GlyphRun[]])[] =>
  ([0, 90, 270, 180] as const)
    .map((direction) => [direction, runs.filter((run) => run.direction === direction)] as const)
    .filter(([, list]) => list.length > 0);
