import type { Point } from "../geometry/index.ts";
import { averagedPeak, stressPeak } from "./averaged.ts";
import type { Assembled, Found } from "./contact-search.ts";
import { derivativesAt, momentsFrom } from "./field.ts";
import type { Equilibrium, Floor, FloorOptions, FloorResult, Governing, Moments, StressPeak } from "./floor.ts";
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
    governing: governing(floor, grid, samples, c, momentsAt),
    equilibrium,
    iterations: factorings,
    unknowns: grid.unknowns,
  };
};

const governing = (
  floor: Floor,
  grid: Assembled["grid"],
  samples: Samples,
  c: Float64Array,
  momentsAt: (p: Point) => Moments,
): Governing => {
  const seen = scan(floor, grid, samples, c);
  const beside = (points: readonly Point[], face: "bottom" | "top"): StressPeak | undefined =>
    largest(points.map((p) => stressPeak(momentsAt(p), face, grid.thickness[derivativesAt(grid, c, p).cell]!, p)));
  const bottom = { thin: beside(samples.thinSide, "bottom"), thick: beside(samples.thickSide, "bottom") };
  const top = { thin: beside(samples.thinSide, "top"), thick: beside(samples.thickSide, "top") };
  const thinSide = largest([bottom.thin, top.thin]);
  const thickSide = largest([bottom.thick, top.thick]);
  return {
    stressBottom: largest([worst(grid, seen.bottom, "bottom"), bottom.thin, bottom.thick])!,
    stressTop: largest([worst(grid, seen.top, "top"), top.thin, top.thick])!,
    stressBottomAveraged: averagedPeak(floor, grid, c, seen.bottom, "bottom"),
    stressTopAveraged: averagedPeak(floor, grid, c, seen.top, "top"),
    ...(thinSide ? { thinSideOfPadEdge: thinSide } : {}),
    ...(thickSide ? { thickSideOfPadEdge: thickSide } : {}),
    groundPressure: seen.pressure,
    deflection: seen.deepest,
    uplift: seen.gap.value > 1e-9 * Math.abs(seen.deepest.value) ? seen.gap : undefined,
  };
};

const worst = (grid: Assembled["grid"], { stress, x, y }: CellPeaks, face: "bottom" | "top"): StressPeak => {
  let cell = 0;
  for (let i = 1; i < stress.length; i++) if (stress[i]! > stress[cell]!) cell = i;
  const thickness = grid.thickness[cell]!;
  const value = stress[cell]!;
  return { value, at: { x: x[cell]!, y: y[cell]! }, face, moment: (value * thickness ** 2) / 6, thickness };
};

const largest = (peaks: readonly (StressPeak | undefined)[]): StressPeak | undefined =>
  peaks.reduce<StressPeak | undefined>((best, p) => (!p || (best && best.value >= p.value) ? best : p), undefined);
