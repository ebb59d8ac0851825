import type { Point } from "@floorworthy/engine/geometry";

/** z = level + sx (x − at.x) + sy (y − at.y), mm. */
export interface FloorPlane {
  readonly at: Point;
  readonly level: number;
  readonly sx: number;
  readonly sy: number;
  /** farthest that a reading lies off the plane, mm */
  readonly off: number;
}

export interface LevelPoint {
  readonly at: Point;
  readonly z: number;
}

/**
 * The plane through three or more levels that leaves the least sum of squares. Method: normal equations about the mean.
 * Undefined where the points lie on a line.
 */
export const planeThrough = (points: readonly LevelPoint[]): FloorPlane | undefined => {
  const n = points.length;
  if (n < 3) return undefined;
  const mean = (of: (p: LevelPoint) => number) => points.reduce((sum, p) => sum + of(p), 0) / n;
  const at = { x: mean((p) => p.at.x), y: mean((p) => p.at.y) };
  const level = mean((p) => p.z);
  const sum = (of: (dx: number, dy: number, dz: number) => number) =>
    points.reduce((s, p) => s + of(p.at.x - at.x, p.at.y - at.y, p.z - level), 0);
  const [xx, xy, yy] = [sum((x) => x * x), sum((x, y) => x * y), sum((_, y) => y * y)];
  const [xz, yz] = [sum((x, _, z) => x * z), sum((_, y, z) => y * z)];
  const determinant = xx * yy - xy * xy;
  if (!(determinant > 1e-9 * xx * yy)) return undefined;
  const sx = (xz * yy - yz * xy) / determinant;
  const sy = (yz * xx - xz * xy) / determinant;
  const off = Math.max(...points.map((p) => Math.abs(p.z - level - sx * (p.at.x - at.x) - sy * (p.at.y - at.y))));
  return { at, level, sx, sy, off };
};

export const heightAt = ({ at, level, sx, sy }: FloorPlane, p: Point): number =>
  level + sx * (p.x - at.x) + sy * (p.y - at.y);
