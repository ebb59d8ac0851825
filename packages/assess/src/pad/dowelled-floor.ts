import type { Polygon, Rect } from "@floorworthy/engine/geometry";
import { barDiameter } from "@floorworthy/engine/orders";
import { dowelBearingCheck, dowelFitsSlab, dowelShearCheck } from "@floorworthy/engine/pads";
import {
  type Floor,
  type FloorResult,
  type Joint,
  relativeStiffness,
  solveFloor,
  unboundedOutline,
} from "@floorworthy/engine/plates";
import { type Check, isUnable, toBase, type Unable, unable } from "@floorworthy/engine/quantities";
import { type Dowel, dowelStiffness, dowelSupport } from "@floorworthy/engine/slabs";
import type { Job } from "@floorworthy/job";
import { boxOf } from "../layout.ts";
import { NU } from "../margin/practice.ts";
import { governing, loadsOf } from "../margin/slab.ts";
import type { PadDesign } from "./design.ts";
import type { PadPart } from "./outlines.ts";
import { DOWEL_SPACING } from "./quantities.ts";
import type { PadSetting } from "./setting.ts";

const UNIT_WEIGHT = 23.56e-6;
/** how far the slab goes on beside the pads, in radii of relative stiffness */
const REACH = 4;

/** #4 bar glued into the old slab, the joint closed; support of the concrete at the low end of 300,000 to 1,500,000 pci. */
export const usualDowel: Dowel = {
  diameter: barDiameter("#4"),
  E: 200_000,
  support: dowelSupport.low,
  opening: toBase(1 / 8, "in"),
};

const ALLOWED = 0.4 * toBase(60_000, "psi");

/** Why the old slab takes no dowels; nothing where it does. */
export const dowelsRefused = (job: Job, slab: number): string | undefined => {
  if (dowelFitsSlab(usualDowel.diameter, slab) === "slab too thin")
    return "the old slab counts less than 4 in (100 mm): too thin for dowels";
  if (dowelFitsSlab(usualDowel.diameter, slab) === "bar too thick")
    return "the dowel would be thicker than an eighth of the slab";
  const { surface } = job.floor;
  if (surface.known && surface.value !== "sound") return "the old slab is not sound enough to hold dowels";
  if (job.floor.cracks.some((crack) => crack.step.known && crack.step.high > 0))
    return "the old slab is cracked with a step";
  return undefined;
};

export interface DowelledFloor {
  readonly results: readonly FloorResult[];
  /** thickness of the old slab, mm */
  readonly slab: number;
  readonly checks: readonly Check[];
}

/** The old slab with the pads in it, their sides joined by springs that carry shear only: the dowels. */
export const solveDowelled = (
  design: PadDesign,
  parts: readonly PadPart[],
  { inputs, counted, E }: PadSetting,
  slab: number,
  oldStrength: number,
  bay: Polygon | undefined,
): DowelledFloor | Unable => {
  const rects = parts.map(({ outline }) => boxOf(outline));
  const joints = rects.flatMap(sidesOf);
  const far = unboundedOutline(
    parts.flatMap(({ outline }) => [...outline]),
    relativeStiffness(E, NU, slab, inputs.k),
    REACH,
  );
  const floor: Floor = {
    outline: bay ? overlap(far, boxOf(bay)) : far,
    thickness: slab,
    zones: rects.map((rect) => ({ rect, thickness: design.depth })),
    E,
    nu: NU,
    k: inputs.k,
    unitWeight: UNIT_WEIGHT,
    joints,
  };
  const focus = [...new Map(counted.map((c) => [c.side, boxOf(c.base.outline)])).values()];
  const results = solveFloor(
    floor,
    governing(counted).map((id) => loadsOf(counted, id)),
    { support: "pushes-only", focus },
  );
  if (isUnable(results)) return unable("dowelled pad", results.reason);
  const P = Math.max(...results.map((result) => largestDowel(result, joints)));
  return {
    results,
    slab,
    checks: [
      dowelShearCheck(usualDowel, P, ALLOWED),
      dowelBearingCheck(usualDowel, P, Math.min(oldStrength, design.strength)),
    ],
  };
};

const sidesOf = ({ x0, y0, x1, y1 }: Rect): Joint[] => {
  const transfer = { kind: "springs", shear: dowelStiffness(usualDowel) / DOWEL_SPACING, rotation: 0 } as const;
  return [
    { axis: "x", at: x0, from: y0, to: y1, transfer },
    { axis: "x", at: x1, from: y0, to: y1, transfer },
    { axis: "y", at: y0, from: x0, to: x1, transfer },
    { axis: "y", at: y1, from: x0, to: x1, transfer },
  ];
};

const overlap = (a: Rect, b: Rect): Rect => ({
  x0: Math.max(a.x0, b.x0),
  y0: Math.max(a.y0, b.y0),
  x1: Math.min(a.x1, b.x1),
  y1: Math.min(a.y1, b.y1),
});

/** Stiffness of one bar times the difference of level, at the bars' places along every side. */
const largestDowel = (result: FloorResult, joints: readonly Joint[]): number => {
  const row = dowelStiffness(usualDowel);
  let worst = 0;
  for (const { axis, at, from = 0, to = 0 } of joints) {
    const n = Math.max(1, Math.round((to - from) / DOWEL_SPACING));
    for (let i = 0; i <= n; i++) {
      const s = from + ((to - from) * (i + 0.5)) / (n + 1);
      const [a, b] = [at - 0.01, at + 0.01].map((c) =>
        result.deflectionAt(axis === "x" ? { x: c, y: s } : { x: s, y: c }),
      );
      worst = Math.max(worst, row * Math.abs(a! - b!));
    }
  }
  return worst;
};
