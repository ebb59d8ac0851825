/**
 * The rigid plate once more, by brute force: the outline cut into small squares, each a spring that only pushes, and a
 * pass over which springs and anchors are at work until none changes. For comparison only: its error falls with the square size.
 */
import type { BasePlate } from "@floorworthy/engine/contact";
import type { Reaction } from "@floorworthy/engine/frames";
import { pointInPolygon } from "@floorworthy/engine/geometry";

interface Spring {
  readonly x: number;
  readonly y: number;
  readonly k: number;
  readonly works: "pushing" | "pulling";
}

/** @param cells - squares along the longer side of the plate @returns settlement and tilts, or undefined if never at rest */
export const fibrePlate = (plate: BasePlate, reaction: Reaction, cells: number) => {
  const xs = plate.outline.map((p) => p.x);
  const ys = plate.outline.map((p) => p.y);
  const [x0, x1, y0, y1] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const a = Math.max(x1 - x0, y1 - y0) / cells;
  const [nx, ny] = [Math.round((x1 - x0) / a), Math.round((y1 - y0) / a)];
  const [dx, dy] = [(x1 - x0) / nx, (y1 - y0) / ny];
  const springs: Spring[] = plate.anchors.map(({ x, y, stiffness }) => ({ x, y, k: stiffness, works: "pulling" }));
  for (let i = 0; i < nx; i++) {
    for (let j = 0; j < ny; j++) {
      const p = { x: x0 + (i + 0.5) * dx, y: y0 + (j + 0.5) * dy };
      if (pointInPolygon(p, plate.outline) === "inside")
        springs.push({ ...p, k: plate.bedding * dx * dy, works: "pushing" });
    }
  }
  let w = settle(springs, reaction);
  for (let pass = 0; pass < 200; pass++) {
    const working = springs.filter(({ x, y, works }) => {
      const s = w[0] + w[1] * x + w[2] * y;
      return works === "pushing" ? s > 0 : s < 0;
    });
    const next = settle(working, reaction);
    const change = Math.abs(next[0] - w[0]) + Math.abs(next[1] - w[1]) + Math.abs(next[2] - w[2]);
    w = next;
    if (change === 0) return { settlement: w[0], tiltX: w[1], tiltY: w[2] };
  }
  return undefined;
};

const settle = (springs: readonly Spring[], { P, Mx, My }: Reaction): [number, number, number] => {
  let [k, kx, ky, kxx, kxy, kyy] = [0, 0, 0, 0, 0, 0];
  for (const s of springs) {
    k += s.k;
    kx += s.k * s.x;
    ky += s.k * s.y;
    kxx += s.k * s.x * s.x;
    kxy += s.k * s.x * s.y;
    kyy += s.k * s.y * s.y;
  }
  const det = (
    a: number,
    b: number,
    c: number,
    d: number,
    e: number,
    f: number,
    g: number,
    h: number,
    i: number,
  ): number => a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
  const D = det(k, kx, ky, kx, kxx, kxy, ky, kxy, kyy);
  return [
    det(P, kx, ky, My, kxx, kxy, Mx, kxy, kyy) / D,
    det(k, P, ky, kx, My, kxy, ky, Mx, kyy) / D,
    det(k, kx, P, kx, kxx, My, ky, kxy, Mx) / D,
  ];
};
