/** Ground no cut may cross: thick parts, the columns' surroundings, tubes that lie too high. */
import type { Rect } from "@floorworthy/engine/geometry";
import type { AnchorClear, KeepOut } from "@floorworthy/engine/joints";
import type { Job, Pipe, Zone } from "@floorworthy/job";
import type { Assessment, PlacedBase } from "../assessment.ts";
import { boxOf } from "../layout.ts";
import type { clearances } from "./practice.ts";
import { ABOVE_TUBE } from "./practice.ts";
import { tape } from "./tape.ts";

export type Clearance = (typeof clearances)[number];

const grown = ({ x0, y0, x1, y1 }: Rect, by: number): Rect => ({
  x0: x0 - by,
  y0: y0 - by,
  x1: x1 + by,
  y1: y1 + by,
});

const named = (name: string): string => (/^the /i.test(name) || name === "" ? name || "a pad" : `the ${name}`);

/** Pads and strips, their sloped sides and the clearance round them. */
const thickParts = (zones: readonly Zone[], slab: number, { pad }: Clearance): readonly KeepOut[] =>
  zones
    .filter(({ kind, outline }) => (kind === "pad" || kind === "strip") && outline.length > 2)
    .map(({ name, outline, thickness, sideSlope }) => {
      const run = sideSlope * Math.max(0, (thickness.known ? thickness.high : slab) - slab);
      return { rect: grown(boxOf(outline), Math.max(pad, run)), what: named(name) };
    });

const aroundBases = (bases: readonly PlacedBase[], clear: Clearance, units: Job["units"]): readonly KeepOut[] =>
  bases
    .filter((base) => base.outline.length > 2)
    .map((base) => ({
      rect: grown(boxOf(base.outline), clear.base),
      what: `the floor within ${tape(clear.base, units)} of the ${base.side} column's base`,
    }));

/** Tubes the saw would reach, as the boxes of their straight pieces. */
const shallowPipes = (pipes: readonly Pipe[], depth: number): readonly KeepOut[] =>
  pipes
    .filter((pipe) => pipe.depth.known && pipe.depth.low < depth + ABOVE_TUBE)
    .flatMap(({ name, line }) =>
      line.slice(1).map((to, i) => ({ rect: grown(boxOf([line[i]!, to]), ABOVE_TUBE), what: named(name) })),
    );

export const keepOutsFor = (
  job: Job,
  { layout }: Assessment,
  slab: number,
  depth: number,
  clear: Clearance,
): readonly KeepOut[] => [
  ...thickParts(job.floor.zones, slab, clear),
  ...aroundBases(layout.bases, clear, job.units),
  ...shallowPipes(job.floor.pipes, depth),
];

/** The maker's distance from a joint to an anchor; an edge's where the page has no line for joints. */
export const makersJointDistance = ({ asks }: Job["lift"]): number =>
  asks.joint.known ? asks.joint.high : asks.edge.known ? asks.edge.high : 0;

export const anchorsToClear = (job: Job, { layout }: Assessment): readonly AnchorClear[] => {
  const distance = makersJointDistance(job.lift);
  if (!(distance > 0)) return [];
  return layout.bases.flatMap(({ side, anchors }) =>
    anchors.map(({ at }) => ({ at, distance, what: `the ${side} column's anchors` })),
  );
};
