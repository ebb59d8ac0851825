import type { Point } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import type { Corner } from "./corners.ts";
import { lengthWords } from "./words.ts";

/** A place for a hole, and how it was come by: `straight` is the first choice. */
export interface Try {
  readonly at: Point;
  readonly way: "straight" | "farther" | "beside" | "around";
}

const IN = 25.4;
const FIRST = 2 * IN;
const FARTHEST = 18 * IN;
const STEP = IN / 2;

/** Said on the card and in the plan. */
export const movingRule = (by: "bases" | "grid", units: Job["units"]): string => {
  const length = (inches: number): string => lengthWords(inches * IN, units);
  return by === "grid"
    ? `A hole of the grid moves around its place, ${length(18)} at most; then, where the bay leaves no other place, to within ${length(12)} of the slab's edge. Otherwise it is left out.`
    : `A hole starts ${length(2)} outside the plate's corner on the line from the plate's middle. Where that is not lawful it moves outward on this line, ${length(18)} at most; then beside the two sides that meet there, as near to the corner as it goes; then, where the bay leaves no other place, to within ${length(12)} of the slab's edge. Otherwise it is left out.`;
};

/** To a quarter inch, or 5 mm: what a tape on a floor can set out. */
const set = (job: Job, p: Point): Point => {
  const grid = job.units === "si" ? 5 : IN / 4;
  return { x: Math.round(p.x / grid) * grid, y: Math.round(p.y / grid) * grid };
};

const from = (p: Point, e: Point, by: number): Point => ({ x: p.x + e.x * by, y: p.y + e.y * by });

const steps = (low: number, high: number): readonly number[] =>
  Array.from({ length: Math.max(0, Math.floor((high - low) / STEP + 1e-9) + 1) }, (_, i) => low + i * STEP);

/** Outward on the diagonal, then beside the sides, nearest to the corner first. */
export const triesAtCorner = (job: Job, corner: Corner): readonly Try[] => {
  const { at, outX, outY, diagonal, halfX, halfY } = corner;
  const outward = steps(FIRST, FARTHEST).map(
    (by, i): Try => ({ at: set(job, from(at, diagonal, by)), way: i === 0 ? "straight" : "farther" }),
  );
  const beside = (out: Point, back: Point, half: number) =>
    steps(0, half).flatMap((s) =>
      steps(FIRST, FARTHEST).map((o) => ({ s, o, at: set(job, from(from(at, out, o), back, -s)) })),
    );
  const sides = [...beside(outX, outY, halfY), ...beside(outY, outX, halfX)]
    .toSorted((p, q) => Math.hypot(p.s, p.o) - Math.hypot(q.s, q.o))
    .map(({ at: place }): Try => ({ at: place, way: "beside" }));
  return [...outward, ...sides];
};

/** Around a place in rings of 2 in, out to `reach` mm: toward the door and the back wall first. */
export const triesAround = (job: Job, centre: Point, reach: number): readonly Try[] => [
  { at: set(job, centre), way: "straight" },
  ...steps(FIRST, reach).flatMap((radius) =>
    Array.from({ length: 16 }, (_, i): Try => {
      const angle = Math.PI / 2 + ((i % 2 ? 1 : -1) * Math.ceil(i / 2) * Math.PI) / 8;
      return {
        at: set(job, { x: centre.x + radius * Math.cos(angle), y: centre.y + radius * Math.sin(angle) }),
        way: "around",
      };
    }),
  ),
];
