import type { Point } from "../geometry/index.ts";
import { averagedPeak, stressPeak } from "./averaged.ts";
import type { Assembled, Found } from "./contact-search.ts";
import { curvatures, derivativesAt, momentsFrom, type Probe } from "./field.ts";
import type { Equilibrium, Floor, FloorOptions, FloorResult, Governing, Moments, Peak, StressPeak } from "./floor.ts";
import type { Grid } from "./grid.ts";
import type { Samples } from "./samples.ts";
import { type CellPeaks, scan } from "./scan.ts";
import { shearDeflection } from "./shear-deflection.ts";

export const floorResult = (
  name: string,
  floor: Floor,
  { grid }: Assembled,
  samples: Samples,
  options: FloorOptions,
  { c, factorings }: Found,
  equilibrium: Equilibrium,
): FloorResult => {
  const at = (p: Point) => derivativesAt(grid, c, p);
  const momentsAt = (p: Point): Moments => {
    const d = at(p);
    return momentsFrom(floor.E, floor.nu, grid.thickness[d.cell]!, d);
  };
  return {
    name,
    deflectionAt: (p) => at(p).w,
    shearDeflectionAt: (p) => shearDeflection(floor, grid.thickness[at(p).cell]!, momentsAt(p)),
    rotationAt: (p) => {
      const { wx, wy } = at(p);
      return { dwdx: wx, dwdy: wy };
    },
    momentsAt,
    groundPressureAt: (p) => {
      const d = at(p);
      const pressure = floor.k * d.w + floor.unitWeight * grid.thickness[d.cell]!;
      return options.support === "pushes-only" ? Math.max(0, pressure) : pressure;
    },
    governing: governing(floor, grid, samples, c),
    equilibrium,
    iterations: factorings,
    unknowns: grid.unknowns,
  };
};

const governing = (floor: Floor, grid: Grid, samples: Samples, c: Float64Array): Governing => {
  const seen = scan(floor, grid, samples, c);
  const faces = (["bottom", "top"] as const).map((face) => {
    const beside = (probes: readonly Probe[]): StressPeak[] =>
      probes.map((probe) => {
        const h = grid.thickness[probe.cell]!;
        return stressPeak(momentsFrom(floor.E, floor.nu, h, curvatures(grid, c, probe)), face, h, probe.at);
      });
    const [thin, thick] = [beside(samples.thinSide), beside(samples.thickSide)];
    const all = [...cellPeaks(grid, seen[face], face), ...thin, ...thick, ...beside(samples.rim)];
    return { thin, thick, worst: largest(all)!, averaged: averagedPeak(floor, grid, c, all, face) };
  });
  const [bottom, top] = [faces[0]!, faces[1]!];
  const rim = rimPeaks(floor, grid, samples.rim, c);
  const thinSide = largest([...bottom.thin, ...top.thin]);
  const thickSide = largest([...bottom.thick, ...top.thick]);
  return {
    stressBottom: bottom.worst,
    stressTop: top.worst,
    stressBottomAveraged: bottom.averaged,
    stressTopAveraged: top.averaged,
    ...(thinSide ? { thinSideOfPadEdge: thinSide } : {}),
    ...(thickSide ? { thickSideOfPadEdge: thickSide } : {}),
    groundPressure: larger(seen.pressure, rim.pressure),
    deflection: larger(seen.deepest, rim.deepest),
    uplift: seen.gap.value > 1e-9 * Math.abs(seen.deepest.value) ? seen.gap : undefined,
  };
};

const rimPeaks = (floor: Floor, grid: Grid, rim: readonly Probe[], c: Float64Array) => {
  let deepest: Peak = { value: -Infinity, at: { x: 0, y: 0 } };
  let pressure = deepest;
  for (const { at, cell } of rim) {
    const { w } = derivativesAt(grid, c, at);
    deepest = larger(deepest, { value: w, at });
    pressure = larger(pressure, { value: floor.k * w + floor.unitWeight * grid.thickness[cell]!, at });
  }
  return { deepest, pressure };
};

const larger = (a: Peak, b: Peak): Peak => (b.value > a.value ? b : a);

const cellPeaks = (grid: Grid, { stress, x, y }: CellPeaks, face: "bottom" | "top"): StressPeak[] => {
  const peaks: StressPeak[] = [];
  for (let cell = 0; cell < stress.length; cell++) {
    const value = stress[cell]!;
    const thickness = grid.thickness[cell]!;
    if (value > -Infinity)
      peaks.push({ value, at: { x: x[cell]!, y: y[cell]! }, face, moment: (value * thickness ** 2) / 6, thickness });
  }
  return peaks;
};

const largest = (peaks: readonly StressPeak[]): StressPeak | undefined =>
  peaks.reduce<StressPeak | undefined>((best, p) => (best && best.value >= p.value ? best : p), undefined);
