import { elasticModulus, modulusOfRupture } from "@floorworthy/engine/codes/aci318-19";
import { type Point, pointInPolygon, type Rect } from "@floorworthy/engine/geometry";
import type { Floor, FloorResult } from "@floorworthy/engine/plates";
import { fromBase, isUnable, toBase, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { factsOf } from "../facts/facts.ts";
import { stopsOf } from "../stops/stops.ts";
import { baseCases } from "./cases.ts";
import { judgedInputs } from "./inputs.ts";
import { firstCrackMargin } from "./practice.ts";
import { solvedPanels } from "./slab.ts";

/** What the slab feels under the case that stresses it most, on a grid: for drawing. The checks read the solution itself. */
export interface StressField {
  /** the concrete shown, e.g. "slab" */
  readonly name: string;
  readonly caseName: string;
  readonly rect: Rect;
  /** points across and along, both from the rectangle's own corner to its opposite */
  readonly nx: number;
  readonly ny: number;
  /** largest tension of either face, MPa, row by row from the back wall; undefined where there is no concrete */
  readonly stress: readonly (number | undefined)[];
  /** on the ground, own weight included, MPa */
  readonly pressure: readonly (number | undefined)[];
  readonly peak: {
    /** as the check counts it: averaged over the thickness */
    readonly stress: { readonly value: number; readonly at: Point; readonly face: "bottom" | "top" };
    readonly pressure: { readonly value: number; readonly at: Point };
  };
  /** what each may be, MPa */
  readonly allowed: { readonly stress: number; readonly rupture: number; readonly pressure: number };
}

const PLACE = "stress field";

/** The field of the piece and case with the highest counted stress, at the worst end of every uncertain fact. */
export const stressField = (job: Job, { across = 56 }: { readonly across?: number } = {}): StressField | Unable => {
  const stop = stopsOf(job)[0];
  if (stop) return unable(PLACE, `Not computed: a figure would be false comfort here. ${stop.reason}`);
  const facts = factsOf(job);
  const inputs = judgedInputs(job, facts, "worst");
  if (isUnable(inputs)) return inputs;
  const cases = baseCases(job, inputs, facts.bases);
  if (isUnable(cases)) return cases;
  const counted = cases.filter(({ standing }) => standing === "counted");
  const psi = fromBase(Math.min(...inputs.concrete.map(({ f }) => f)), "psi");
  const solved = solvedPanels(job, inputs, counted, toBase(elasticModulus(psi), "psi"));
  const worst = solved
    .flatMap(({ piece, own, floor, results }) =>
      isUnable(results) ? [] : results.map((result) => ({ piece, own, floor, result })),
    )
    .toSorted((a, b) => peakOf(b.result).value - peakOf(a.result).value)[0];
  if (!worst) return unable(PLACE, solved.map(({ results }) => (isUnable(results) ? results.reason : "")).join(" "));
  const { piece, own, floor, result } = worst;
  const rupture = toBase(modulusOfRupture(psi), "psi");
  const { value, at, face } = peakOf(result);
  return {
    name: piece.name,
    caseName: own.find(({ caseId }) => caseId === result.name)?.caseName ?? result.name,
    ...sampled(floor, result, across),
    peak: { stress: { value, at, face }, pressure: result.governing.groundPressure },
    allowed: { stress: rupture / firstCrackMargin(job), rupture, pressure: inputs.bearing.value },
  };
};

const peakOf = ({ governing }: FloorResult) =>
  governing.stressTopAveraged.value > governing.stressBottomAveraged.value
    ? governing.stressTopAveraged
    : governing.stressBottomAveraged;

const sampled = (floor: Floor, result: FloorResult, across: number) => {
  const { x0, y0, x1, y1 } = floor.outline;
  const step = Math.max(x1 - x0, y1 - y0) / (across - 1);
  const [nx, ny] = [x1 - x0, y1 - y0].map((length) => Math.max(2, Math.round(length / step) + 1)) as [number, number];
  const points = Array.from({ length: nx * ny }, (_, i) => ({
    x: x0 + ((x1 - x0) * (i % nx)) / (nx - 1),
    y: y0 + ((y1 - y0) * Math.floor(i / nx)) / (ny - 1),
  }));
  const concrete = (p: Point): boolean => !floor.within || pointInPolygon(p, floor.within) !== "outside";
  return {
    rect: floor.outline,
    nx,
    ny,
    stress: points.map((p) => (concrete(p) ? tensionAt(floor, result, p) : undefined)),
    pressure: points.map((p) => (concrete(p) ? result.groundPressureAt(p) : undefined)),
  };
};

/** Larger principal tension of the two faces, 6 m / h². */
const tensionAt = (floor: Floor, result: FloorResult, p: Point): number => {
  const { Mx, My, Mxy } = result.momentsAt(p);
  const middle = (Mx + My) / 2;
  const radius = Math.hypot((Mx - My) / 2, Mxy);
  return (6 * (Math.abs(middle) + radius)) / thicknessAt(floor, p) ** 2;
};

const thicknessAt = ({ zones, thickness }: Floor, { x, y }: Point): number =>
  zones.findLast(({ rect }) => x >= rect.x0 && x <= rect.x1 && y >= rect.y0 && y <= rect.y1)?.thickness ?? thickness;
