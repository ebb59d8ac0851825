import type { Axis } from "./axis.ts";
import { curvatureWidth } from "./curvature.ts";
import type { Floor, Peak } from "./floor.ts";
import type { Grid } from "./grid.ts";
import { type AxisSamples, perSpan, type Samples } from "./samples.ts";

/** The largest of everything over the samples. */
export interface Scan {
  /** the largest principal tension of every cell on each face */
  readonly bottom: CellPeaks;
  readonly top: CellPeaks;
  readonly deepest: Peak;
  /** MPa, largest k w + γ h */
  readonly pressure: Peak;
  /** mm, largest gap; 0 or less where the floor touches everywhere */
  readonly gap: Peak;
}

export interface CellPeaks {
  /** MPa, -Infinity where a cell has no sample that counts */
  readonly stress: Float64Array;
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** Sums the x axis first for every sample of x, then walks the samples of y. */
export const scan = (floor: Floor, grid: Grid, samples: Samples, c: Float64Array): Scan => {
  const cells = grid.thickness.length;
  const [bottom, top] = [noPeaks(cells), noPeaks(cells)];
  const best = { w: -Infinity, wx: 0, wy: 0, p: -Infinity, px: 0, py: 0, gap: -Infinity, gx: 0, gy: 0 };
  const { nu, k, unitWeight } = floor;
  const { x, y, nearPadEdge, outside, stressPerCurvature } = samples;
  const line = {
    value: new Float64Array(grid.y.count),
    slope: new Float64Array(grid.y.count),
    curvature: new Float64Array(grid.y.count),
  };
  for (let i = 0; i < x.count; i++) {
    const s = Math.floor(i / perSpan);
    sumAcross(grid, x, grid.x, i, c, line);
    const px = x.at[i]!;
    for (let j = 0; j < y.count; j++) {
      if (outside?.[i * y.count + j] === 1) continue;
      const t = Math.floor(j / perSpan);
      const cell = s * grid.y.spans + t;
      const h = grid.thickness[cell]!;
      const py = y.at[j]!;
      const w = dot(y.value, 4 * j, line.value, grid.y.first[t]!, 4);
      const pressure = k * w + unitWeight * h;
      if (w > best.w) [best.w, best.wx, best.wy] = [w, px, py];
      if (pressure > best.p) [best.p, best.px, best.py] = [pressure, px, py];
      const gap = k > 0 ? -pressure / k : 0;
      if (gap > best.gap) [best.gap, best.gx, best.gy] = [gap, px, py];
      if (nearPadEdge[i * y.count + j] === 1) continue;
      const xx = dot(y.value, 4 * j, line.curvature, grid.y.first[t]!, 4);
      const xy = dot(y.slope, 4 * j, line.slope, grid.y.first[t]!, 4);
      const yy = dot(y.curvature, curvatureWidth * j, line.value, y.curvatureFirst[j]!, curvatureWidth);
      const perCurvature = stressPerCurvature[cell]!;
      const middle = (-(1 + nu) * (xx + yy)) / 2;
      const radius = (1 - nu) * Math.sqrt(((xx - yy) / 2) ** 2 + xy * xy);
      keep(bottom, cell, perCurvature * (middle + radius), px, py);
      keep(top, cell, perCurvature * (radius - middle), px, py);
    }
  }
  return {
    bottom,
    top,
    deepest: { value: best.w, at: { x: best.wx, y: best.wy } },
    pressure: { value: best.p, at: { x: best.px, y: best.py } },
    gap: { value: best.gap, at: { x: best.gx, y: best.gy } },
  };
};

const noPeaks = (cells: number): CellPeaks => ({
  stress: new Float64Array(cells).fill(-Infinity),
  x: new Float64Array(cells),
  y: new Float64Array(cells),
});

const keep = (peaks: CellPeaks, cell: number, stress: number, x: number, y: number): void => {
  if (stress <= peaks.stress[cell]!) return;
  peaks.stress[cell] = stress;
  peaks.x[cell] = x;
  peaks.y[cell] = y;
};

const dot = (a: Float64Array, i: number, b: Float64Array, j: number, n: number): number => {
  let sum = 0;
  const count = Math.min(n, b.length - j);
  for (let m = 0; m < count; m++) sum += a[i + m]! * b[j + m]!;
  return sum;
};

/** The coefficients of the y axis along the line x = sample i, for the value, the slope and the curvature in x. */
const sumAcross = (
  { strideX, strideY }: Grid,
  samples: AxisSamples,
  axis: Axis,
  i: number,
  c: Float64Array,
  line: { value: Float64Array; slope: Float64Array; curvature: Float64Array },
): void => {
  const first = axis.first[Math.floor(i / perSpan)]!;
  const bent = samples.curvatureFirst[i]!;
  const width = Math.min(curvatureWidth, axis.count - bent);
  for (let j = 0; j < line.value.length; j++) {
    let [value, slope, curvature] = [0, 0, 0];
    for (let a = 0; a < 4; a++) {
      const coefficient = c[(first + a) * strideX + j * strideY]!;
      value += samples.value[4 * i + a]! * coefficient;
      slope += samples.slope[4 * i + a]! * coefficient;
    }
    for (let a = 0; a < width; a++)
      curvature += samples.curvature[curvatureWidth * i + a]! * c[(bent + a) * strideX + j * strideY]!;
    line.value[j] = value;
    line.slope[j] = slope;
    line.curvature[j] = curvature;
  }
};
