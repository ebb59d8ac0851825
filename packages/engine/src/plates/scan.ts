import type { Floor, Peak, StressPeak } from "./floor.ts";
import type { Grid } from "./grid.ts";
import { flexuralRigidity } from "./relative-stiffness.ts";
import { localPoints, type Samples, samplePosition } from "./samples.ts";

/** The largest of everything over the samples, and the worst sample of every cell for each face. */
export interface Scan {
  readonly bottom: StressPeak;
  readonly top: StressPeak;
  /** sample numbers, one per cell, and the stresses there */
  readonly worst: Readonly<Record<"bottom" | "top", { readonly sample: Int32Array; readonly stress: Float64Array }>>;
  readonly deepest: Peak;
  /** MPa, largest k w + γ h */
  readonly pressure: Peak;
  /** mm, largest gap; 0 or less where the floor touches everywhere */
  readonly gap: Peak;
}

const n = localPoints.length;

export const scan = (floor: Floor, grid: Grid, samples: Samples, c: Float64Array): Scan => {
  const cells = grid.thickness.length;
  const worst = {
    bottom: { sample: new Int32Array(cells), stress: new Float64Array(cells).fill(-Infinity) },
    top: { sample: new Int32Array(cells), stress: new Float64Array(cells).fill(-Infinity) },
  };
  const best = { w: -Infinity, wAt: 0, p: -Infinity, pAt: 0, gap: -Infinity, gapAt: 0 };
  const field = new Float64Array(4 * n * n); // w, w,xx, w,yy, w,xy of one cell
  const { nu, k, unitWeight } = floor;
  for (let cell = 0; cell < cells; cell++) {
    const h = grid.thickness[cell]!;
    const stressPerCurvature = (6 * flexuralRigidity(floor.E, nu, h)) / (h * h);
    cellField(grid, samples, c, cell, field);
    for (let i = 0; i < n * n; i++) {
      const sample = n * n * cell + i;
      const w = field[i]!;
      const pressure = k * w + unitWeight * h;
      if (w > best.w) [best.w, best.wAt] = [w, sample];
      if (pressure > best.p) [best.p, best.pAt] = [pressure, sample];
      const gap = k > 0 ? -pressure / k : 0;
      if (gap > best.gap) [best.gap, best.gapAt] = [gap, sample];
      if (samples.nearPadEdge[sample] === 1) continue;
      const xx = field[n * n + i]!;
      const yy = field[2 * n * n + i]!;
      const xy = field[3 * n * n + i]!;
      const middle = (-(1 + nu) * (xx + yy)) / 2;
      const radius = (1 - nu) * Math.sqrt(((xx - yy) / 2) ** 2 + xy * xy);
      const bottom = stressPerCurvature * (middle + radius);
      const top = stressPerCurvature * (radius - middle);
      if (bottom > worst.bottom.stress[cell]!)
        [worst.bottom.stress[cell], worst.bottom.sample[cell]] = [bottom, sample];
      if (top > worst.top.stress[cell]!) [worst.top.stress[cell], worst.top.sample[cell]] = [top, sample];
    }
  }
  const at = (value: number, sample: number): Peak => ({ value, at: samplePosition(grid, sample) });
  return {
    bottom: worstOf(grid, worst.bottom, "bottom"),
    top: worstOf(grid, worst.top, "top"),
    worst,
    deepest: at(best.w, best.wAt),
    pressure: at(best.p, best.pAt),
    gap: at(best.gap, best.gapAt),
  };
};

const worstOf = (grid: Grid, { sample, stress }: Scan["worst"]["top"], face: "bottom" | "top"): StressPeak => {
  let cell = 0;
  for (let i = 1; i < stress.length; i++) if (stress[i]! > stress[cell]!) cell = i;
  const thickness = grid.thickness[cell]!;
  const value = stress[cell]!;
  return { value, at: samplePosition(grid, sample[cell]!), face, moment: (value * thickness ** 2) / 6, thickness };
};

/** w and its second derivatives at the samples of one cell, summed one axis after the other. */
const cellField = (grid: Grid, { x, y }: Samples, c: Float64Array, cell: number, out: Float64Array): void => {
  const [s, t] = [Math.floor(cell / grid.y.spans), cell % grid.y.spans];
  const start = grid.x.first[s]! * grid.strideX + grid.y.first[t]! * grid.strideY;
  for (let h = 0; h < n; h++) {
    const v = (n * t + h) * 4;
    for (let a = 0; a < 4; a++) {
      let [s0, s1, s2] = [0, 0, 0];
      for (let b = 0; b < 4; b++) {
        const value = c[start + a * grid.strideX + b * grid.strideY]!;
        s0 += value * y[0][v + b]!;
        s1 += value * y[1][v + b]!;
        s2 += value * y[2][v + b]!;
      }
      partial[a] = s0;
      partial[4 + a] = s1;
      partial[8 + a] = s2;
    }
    for (let g = 0; g < n; g++) {
      const u = (n * s + g) * 4;
      let [w, xx, yy, xy] = [0, 0, 0, 0];
      for (let a = 0; a < 4; a++) {
        const n0 = x[0][u + a]!;
        w += n0 * partial[a]!;
        yy += n0 * partial[8 + a]!;
        xx += x[2][u + a]! * partial[a]!;
        xy += x[1][u + a]! * partial[4 + a]!;
      }
      const i = n * g + h;
      out[i] = w;
      out[n * n + i] = xx;
      out[2 * n * n + i] = yy;
      out[3 * n * n + i] = xy;
    }
  }
};

const partial = new Float64Array(12);
