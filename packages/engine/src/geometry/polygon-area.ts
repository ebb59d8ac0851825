import type { Point, Polygon } from "./point.ts";

/** Area of a simple polygon, mm²: positive when counter-clockwise (shoelace, about the first point to keep digits). */
export const signedArea = (polygon: Polygon): number => {
  const o = polygon[0];
  if (!o) return 0;
  let twice = 0;
  for (let i = 1; i + 1 < polygon.length; i++) {
    const a = polygon[i]!;
    const b = polygon[i + 1]!;
    twice += (a.x - o.x) * (b.y - o.y) - (b.x - o.x) * (a.y - o.y);
  }
  return twice / 2;
};

/** Area of a simple polygon, mm², whichever way it runs. */
export const polygonArea = (polygon: Polygon): number => Math.abs(signedArea(polygon));

/** Centroid of a simple polygon with area; of a degenerate one, the mean of its points. */
export const polygonCentroid = (polygon: Polygon): Point => {
  const { area, x, y } = polygonMoments(polygon);
  if (area > 0) return { x, y };
  const n = Math.max(polygon.length, 1);
  return { x: polygon.reduce((s, p) => s + p.x, 0) / n, y: polygon.reduce((s, p) => s + p.y, 0) / n };
};

/** Area, centroid and second moments of area about axes through the centroid. */
export interface AreaMoments {
  /** mm² */
  readonly area: number;
  /** centroid, mm */
  readonly x: number;
  readonly y: number;
  /** ∫(y − ȳ)² dA, mm⁴ */
  readonly Ixx: number;
  /** ∫(x − x̄)² dA, mm⁴ */
  readonly Iyy: number;
  /** ∫(x − x̄)(y − ȳ) dA, mm⁴ */
  readonly Ixy: number;
}

/** Area, centroid and centroidal second moments of a simple polygon (Green's theorem; either direction). */
export const polygonMoments = (polygon: Polygon): AreaMoments => {
  const o = polygon[0] ?? { x: 0, y: 0 };
  let [A, Sx, Sy, xx, yy, xy] = [0, 0, 0, 0, 0, 0];
  for (let i = 1; i + 1 < polygon.length; i++) {
    const [ax, ay] = [polygon[i]!.x - o.x, polygon[i]!.y - o.y];
    const [bx, by] = [polygon[i + 1]!.x - o.x, polygon[i + 1]!.y - o.y];
    const cross = ax * by - bx * ay; // twice the area of the triangle o-a-b
    A += cross / 2;
    Sx += (cross * (ax + bx)) / 6;
    Sy += (cross * (ay + by)) / 6;
    xx += (cross * (ax * ax + ax * bx + bx * bx)) / 12;
    yy += (cross * (ay * ay + ay * by + by * by)) / 12;
    xy += (cross * (2 * ax * ay + ax * by + bx * ay + 2 * bx * by)) / 24;
  }
  if (A === 0) return { area: 0, x: o.x, y: o.y, Ixx: 0, Iyy: 0, Ixy: 0 };
  const [cx, cy] = [Sx / A, Sy / A];
  const sign = Math.sign(A);
  return {
    area: Math.abs(A),
    x: o.x + cx,
    y: o.y + cy,
    Ixx: sign * (yy - A * cy * cy),
    Iyy: sign * (xx - A * cx * cx),
    Ixy: sign * (xy - A * cx * cy),
  };
};
