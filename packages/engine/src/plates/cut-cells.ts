/**
 * A floor that is only part of its outline: the convex piece `within`. Cells outside it are void, cells its rim crosses
 * are integrated over the part inside. The rim is a free edge at whatever angle it runs, the splines simply end there.
 *
 * Void keeps `voidStiffness` of the plate so that every unknown has an answer; what that adds is measured in
 * tests/laws/slanted-cracks.test.ts.
 */
import { clipByHalfPlane, type Polygon, polygonArea, signedArea } from "../geometry/index.ts";
import { type BandMatrix, bandIndex, gaussRule } from "../numerics/index.ts";
import { evaluate, spanLength } from "./axis.ts";
import type { Floor } from "./floor.ts";
import type { GaussPoints } from "./gauss-points.ts";
import type { Grid } from "./grid.ts";
import { flexuralRigidity } from "./relative-stiffness.ts";
import { sidesOut } from "./rim.ts";

export const voidStiffness = 1e-6;
export const voidBed = 1e-8;

export type CellCover =
  | { readonly kind: "solid" }
  | { readonly kind: "void" }
  | { readonly kind: "cut"; readonly piece: Polygon };

/** One entry a cell; undefined where the floor fills its outline. */
export const cellCovers = (floor: Floor, { x, y }: Grid): readonly CellCover[] | undefined => {
  if (!floor.within) return undefined;
  const rim = sidesOut(floor.within);
  return Array.from({ length: x.spans * y.spans }, (_, cell): CellCover => {
    const [s, t] = [Math.floor(cell / y.spans), cell % y.spans];
    const box = rectangle(x.breaks[s]!, x.breaks[s + 1]!, y.breaks[t]!, y.breaks[t + 1]!);
    const piece = rim.reduce<Polygon>(clipByHalfPlane, box);
    const share = polygonArea(piece) / polygonArea(box);
    if (share > 1 - 1e-9) return { kind: "solid" };
    return share < 1e-9 ? { kind: "void" } : { kind: "cut", piece };
  });
};

const rectangle = (x0: number, x1: number, y0: number, y1: number): Polygon => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

/** Gauss points stand for the part of their share of the cell that is concrete; the shares tile the cell. */
export const cutAreas = (floor: Floor, grid: Grid, covers: readonly CellCover[], points: GaussPoints): GaussPoints => {
  const rim = sidesOut(floor.within!);
  const area = points.area.slice();
  const { x, y } = grid;
  covers.forEach((cover, cell) => {
    if (cover.kind === "solid") return;
    const [s, t] = [Math.floor(cell / y.spans), cell % y.spans];
    for (let g = 0; g < 4; g++)
      for (let h = 0; h < 4; h++) {
        const i = 16 * cell + 4 * g + h;
        if (cover.kind === "void") {
          area[i] = 0;
          continue;
        }
        const [x0, x1] = [tile(x.breaks[s]!, spanLength(x, s), g), tile(x.breaks[s]!, spanLength(x, s), g + 1)];
        const [y0, y1] = [tile(y.breaks[t]!, spanLength(y, t), h), tile(y.breaks[t]!, spanLength(y, t), h + 1)];
        area[i] = polygonArea(rim.reduce<Polygon>(clipByHalfPlane, rectangle(x0, x1, y0, y1)));
      }
  });
  return { ...points, area };
};

const { weights } = gaussRule(4);
const tile = (start: number, length: number, n: number): number =>
  start +
  length *
    Array.from(weights)
      .slice(0, n)
      .reduce((sum, w) => sum + w, 0);

const outer = gaussRule(5);
const inner = gaussRule(4);

/** Adds `share` of the plate's bending stiffness over the piece of a cut cell, and the bed as its Gauss points stand for it. */
export const addCutCell = (
  matrix: BandMatrix,
  floor: Floor,
  grid: Grid,
  points: GaussPoints,
  cell: number,
  piece: Polygon,
  share: number,
): void => {
  const { x, y, strideX, strideY } = grid;
  const [s, t] = [Math.floor(cell / y.spans), cell % y.spans];
  const start = x.first[s]! * strideX + y.first[t]! * strideY;
  const D = share * flexuralRigidity(floor.E, floor.nu, grid.thickness[cell]!);
  const local = new Float64Array(256);
  const f = [0, 1, 2].map(() => [new Float64Array(4), new Float64Array(4)] as const);
  const [xx, yy, xy] = [new Float64Array(16), new Float64Array(16), new Float64Array(16)];
  forEachPoint(piece, (px, py, area) => {
    const [tx, ty] = [(px - x.breaks[s]!) / spanLength(x, s), (py - y.breaks[t]!) / spanLength(y, t)];
    for (const order of [0, 1, 2] as const) {
      evaluate(x, s, tx, order, f[order]![0]);
      evaluate(y, t, ty, order, f[order]![1]);
    }
    for (let a = 0; a < 4; a++)
      for (let b = 0; b < 4; b++) {
        xx[4 * a + b] = f[2]![0][a]! * f[0]![1][b]!;
        yy[4 * a + b] = f[0]![0][a]! * f[2]![1][b]!;
        xy[4 * a + b] = f[1]![0][a]! * f[1]![1][b]!;
      }
    for (let i = 0; i < 16; i++)
      for (let j = 0; j <= i; j++)
        local[16 * i + j]! +=
          area *
          D *
          (xx[i]! * xx[j]! +
            yy[i]! * yy[j]! +
            floor.nu * (xx[i]! * yy[j]! + yy[i]! * xx[j]!) +
            2 * (1 - floor.nu) * xy[i]! * xy[j]!);
  });
  for (let g = 0; g < 4; g++)
    for (let h = 0; h < 4; h++) {
      const weight = floor.k * points.area[16 * cell + 4 * g + h]!;
      if (weight === 0) continue;
      for (let a = 0; a < 4; a++)
        for (let b = 0; b < 4; b++) xx[4 * a + b] = points.nx[16 * s + 4 * g + a]! * points.ny[16 * t + 4 * h + b]!;
      for (let i = 0; i < 16; i++) for (let j = 0; j <= i; j++) local[16 * i + j]! += weight * xx[i]! * xx[j]!;
    }
  for (let i = 0; i < 16; i++)
    for (let j = 0; j < 16; j++) {
      const row = start + (i >> 2) * strideX + (i & 3) * strideY;
      const column = start + (j >> 2) * strideX + (j & 3) * strideY;
      if (column <= row) matrix.values[bandIndex(matrix, row, column)]! += local[i >= j ? 16 * i + j : 16 * j + i]!;
    }
};

/** A fan of triangles, each by a collapsed Gauss product. */
const forEachPoint = (piece: Polygon, at: (x: number, y: number, area: number) => void): void => {
  const o = piece[0]!;
  const turn = Math.sign(signedArea(piece));
  for (let i = 1; i + 1 < piece.length; i++) {
    const [p, q] = [piece[i]!, piece[i + 1]!];
    const twice = turn * ((p.x - o.x) * (q.y - o.y) - (p.y - o.y) * (q.x - o.x));
    if (twice === 0) continue;
    for (let g = 0; g < 5; g++)
      for (let h = 0; h < 4; h++) {
        const r = outer.points[g]!;
        const u = inner.points[h]!;
        at(
          o.x + r * (p.x - o.x + u * (q.x - p.x)),
          o.y + r * (p.y - o.y + u * (q.y - p.y)),
          twice * r * outer.weights[g]! * inner.weights[h]!,
        );
      }
  }
};
