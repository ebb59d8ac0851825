import type { Point } from "@floorworthy/engine/geometry";
import { isUnable, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { stopsOf } from "../stops/stops.ts";
import { poseOf } from "./footprint.ts";
import { jobAt } from "./job-at.ts";
import { mapPositions } from "./map-positions.ts";
import type { Placing, Stand } from "./placing.ts";
import { placeAt } from "./stands.ts";
import { type WorstCheck, worstChecks } from "./worst-check.ts";

/** The margin's worst ratio with the lift's middle at one place; undefined where it cannot be computed there, with why. */
export interface MapPoint extends Partial<WorstCheck> {
  readonly at: Point;
  readonly why?: string;
}

/** How the margin changes over the places where the lift may stand. Advice: it never overrides the maker's page. */
export interface MarginMap {
  readonly stand: Stand;
  /** between neighbouring positions, mm; finer across a narrow window */
  readonly spacing: number;
  readonly points: readonly MapPoint[];
  readonly least: MapPoint | undefined;
  readonly most: MapPoint | undefined;
  readonly state: "complete" | "cancelled";
  readonly notes: readonly string[];
}

export interface MapOptions {
  /** mm; taken from `count` when left out */
  readonly spacing?: number;
  /** positions at most; 200 unless given */
  readonly count?: number;
}

export interface MapProgress {
  readonly done: number;
  readonly of: number;
}

/**
 * The worst ratio of the margin at each position, one step per position, so that the caller may show progress, draw what is
 * there already or stop. Same figures as the margin of the job with its lift moved there: what depends on the place
 * (thickness, edges, joints, the slab as a plate) is computed anew, what does not (loads, contact of plates) is kept.
 * Unable under a stop, without a feasible place, and where the margin cannot be computed at all.
 */
export function* marginMapSteps(
  job: Job,
  placing: Placing,
  { spacing, count = 200 }: MapOptions = {},
): Generator<MapProgress, MarginMap | Unable, "go-on" | "stop" | undefined> {
  const refused = refusal(job, placing);
  if (refused) return refused;
  const { stand } = placing.proposed!;
  const way = placing.ways.find((w) => w.stand === stand)!;
  const grid = mapPositions(way.regions, { count, ...(spacing === undefined ? {} : { spacing }) });
  const own = [placing.proposed!.middle];
  const places = [...own, ...grid.positions];
  const worst = worstChecks();
  const from = job.position ?? placing.proposed!.position;
  const points: MapPoint[] = [];
  let state: MarginMap["state"] = "complete";
  for (const at of places) {
    const moved = jobAt(
      { ...job, position: from },
      placeAt(from, poseOf(from), job.position ? stand : "as-wanted", at),
    );
    const found = worst(moved);
    if (isUnable(found) && points.length === 0) return { ...found, place: "margin map" };
    points.push(isUnable(found) ? { at, why: found.reason } : { at, ...found });
    if ((yield { done: points.length, of: places.length }) === "stop") {
      state = "cancelled";
      break;
    }
  }
  const known = points.filter((p) => p.ratio !== undefined).toSorted((a, b) => a.ratio! - b.ratio!);
  return {
    stand,
    spacing: grid.spacing,
    points,
    least: known[0],
    most: known.at(-1),
    state,
    notes: [
      "Thickness and strength are those found at the bases as wanted: measure again where the lift comes to stand.",
      ...(known.length < points.length
        ? [`At ${points.length - known.length} places the margin cannot be computed.`]
        : []),
    ],
  };
}

/** The whole map at once, with progress told; `cancelled` is asked after each position. */
export const marginMap = (
  job: Job,
  placing: Placing,
  {
    tell,
    cancelled,
    ...options
  }: MapOptions & {
    readonly tell?: (done: number, of: number) => void;
    readonly cancelled?: { readonly aborted: boolean };
  } = {},
): MarginMap | Unable => {
  const steps = marginMapSteps(job, placing, options);
  let step = steps.next();
  while (!step.done) {
    tell?.(step.value.done, step.value.of);
    step = steps.next(cancelled?.aborted ? "stop" : "go-on");
  }
  return step.value;
};

const refusal = (job: Job, { answer, sentence, proposed }: Placing): Unable | undefined => {
  const stop = stopsOf(job)[0];
  if (stop) return unable("margin map", `Not computed: a figure would be false comfort here. ${stop.reason}`);
  return answer === "stopped" || proposed === undefined ? unable("margin map", sentence) : undefined;
};
