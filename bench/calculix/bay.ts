/**
 * The bay on which the plate is laid beside CalculiX: two columns on thickened pads in a thin slab, one free edge near
 * the right column, base plates that push with their toe and pull with their heel. Invented; N, mm, MPa.
 */
import type { Rect } from "@floorworthy/engine/geometry";
import type { Floor, FloorLoad } from "@floorworthy/engine/plates";

export interface Patch {
  readonly rect: Rect;
  /** MPa, down positive */
  readonly pressure: number;
}

const columns = [1600, 4900] as const;
const middle = 2700;
const half = 600;

export const floor: Floor = {
  outline: { x0: 0, x1: 5800, y0: 0, y1: 5400 },
  thickness: 125,
  zones: columns.map((x) => ({
    rect: { x0: x - half, x1: x + half, y0: middle - half, y1: middle + half },
    thickness: 250,
  })),
  E: 27_600,
  nu: 0.15,
  k: 0.027,
  unitWeight: 2.4e-5,
  joints: [],
};

export const basePlates: readonly Rect[] = columns.map((x) => ({
  x0: x - 200,
  x1: x + 200,
  y0: middle - 200,
  y1: middle + 200,
}));

/** Toe strip of 100 mm toward the middle of the bay, heel strip of 50 mm that pulls: 85 kN down, 60 kN up, per column. */
export const patches: readonly Patch[] = columns.flatMap((x, i) => {
  const inward = i === 0 ? 1 : -1;
  const strip = (from: number, to: number): Rect => ({
    x0: x + Math.min(inward * from, inward * to),
    x1: x + Math.max(inward * from, inward * to),
    y0: middle - 200,
    y1: middle + 200,
  });
  return [
    { rect: strip(100, 200), pressure: 85_000 / (100 * 400) },
    { rect: strip(-175, -125), pressure: -60_000 / (50 * 400) },
  ];
});

export const loads: readonly FloorLoad[] = patches.map(({ rect: r, pressure }) => ({
  kind: "pressure",
  polygon: [
    { x: r.x0, y: r.y0 },
    { x: r.x1, y: r.y0 },
    { x: r.x1, y: r.y1 },
    { x: r.x0, y: r.y1 },
  ],
  p0: pressure,
  px: 0,
  py: 0,
}));
