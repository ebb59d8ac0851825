import { clipByHalfPlane, type Polygon, signedArea } from "../geometry/index.ts";
import { gaussRule } from "../numerics/index.ts";
import { evaluate, spanAt, spanLength } from "./axis.ts";
import type { FloorLoad } from "./floor.ts";
import type { Grid } from "./grid.ts";

type Pressure = Extract<FloorLoad, { kind: "pressure" }>;

/**
 * Adds ∫ p N over the polygon, exactly: the polygon is clipped to every cell it meets and each piece is a fan of signed
 * triangles, integrated by a collapsed Gauss product that is exact for the degree seven of p N (5 × 4 points).
 * Returns the area of the polygon that lies on the floor, mm².
 */
export const addPressure = (grid: Grid, load: Pressure, into: Float64Array): number => {
  const sign = Math.sign(signedArea(load.polygon));
  const xs = load.polygon.map((p) => p.x);
  const ys = load.polygon.map((p) => p.y);
  const [s0, s1] = [spanAt(grid.x, Math.min(...xs)), spanAt(grid.x, Math.max(...xs))];
  const [t0, t1] = [spanAt(grid.y, Math.min(...ys)), spanAt(grid.y, Math.max(...ys))];
  let area = 0;
  for (let s = s0; s <= s1; s++) {
    const strip = clipByHalfPlane(clipByHalfPlane(load.polygon, { nx: 1, ny: 0, c: grid.x.breaks[s + 1]! }), {
      nx: -1,
      ny: 0,
      c: -grid.x.breaks[s]!,
    });
    for (let t = t0; t <= t1; t++) {
      const piece = clipByHalfPlane(clipByHalfPlane(strip, { nx: 0, ny: 1, c: grid.y.breaks[t + 1]! }), {
        nx: 0,
        ny: -1,
        c: -grid.y.breaks[t]!,
      });
      area += addPiece(grid, load, piece, sign, s, t, into);
    }
  }
  return area;
};

const outer = gaussRule(5);
const inner = gaussRule(4);

const addPiece = (
  grid: Grid,
  load: Pressure,
  piece: Polygon,
  sign: number,
  s: number,
  t: number,
  into: Float64Array,
): number => {
  const o = piece[0];
  if (!o) return 0;
  const { x, y, strideX, strideY } = grid;
  const start = x.first[s]! * strideX + y.first[t]! * strideY;
  const [nx, ny] = [new Float64Array(4), new Float64Array(4)];
  let area = 0;
  for (let i = 1; i + 1 < piece.length; i++) {
    const [p, q] = [piece[i]!, piece[i + 1]!];
    const twice = sign * ((p.x - o.x) * (q.y - o.y) - (p.y - o.y) * (q.x - o.x));
    area += twice / 2;
    if (twice === 0) continue;
    for (let g = 0; g < 5; g++)
      for (let h = 0; h < 4; h++) {
        const r = outer.points[g]!; // distance from o, 0..1
        const u = inner.points[h]!; // from p to q
        const px = o.x + r * (p.x - o.x + u * (q.x - p.x));
        const py = o.y + r * (p.y - o.y + u * (q.y - p.y));
        const force = twice * r * outer.weights[g]! * inner.weights[h]! * (load.p0 + load.px * px + load.py * py);
        evaluate(x, s, (px - x.breaks[s]!) / spanLength(x, s), 0, nx);
        evaluate(y, t, (py - y.breaks[t]!) / spanLength(y, t), 0, ny);
        for (let a = 0; a < 4; a++)
          for (let b = 0; b < 4; b++) into[start + a * strideX + b * strideY]! += force * nx[a]! * ny[b]!;
      }
  }
  return area;
};
