import { distance, polygonArea } from "@floorworthy/engine/geometry";
import {
  closedWindows,
  deepestPlace,
  feasiblePositions,
  nearestPlace,
  type Placement,
} from "@floorworthy/engine/placement";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job, Position } from "@floorworthy/job";
import { anchoring } from "../facts/anchoring.ts";
import { sideNames } from "./bay-sides.ts";
import { blockersOf } from "./blockers.ts";
import { asked, type Constraint } from "./constraints.ts";
import { footprintOf, type Pose } from "./footprint.ts";
import { moveWords } from "./move-words.ts";
import type { ClosedWay, PlaceRegion, Stand, Way } from "./placing.ts";
import { standWords, turnOf, type WayIn } from "./stands.ts";

/** One way of standing with its feasible positions. */
export interface SolvedWay {
  readonly stand: Stand;
  readonly wayIn: WayIn;
  readonly placement: Placement;
}

export const solve = (
  job: Job,
  position: Position,
  stand: Stand,
  how: WayIn,
  constraints: readonly Constraint[],
): Placement | string => {
  const edge = asked(job.lift.asks.edge);
  const clear = anchoring(job.lift) === "loose" ? { plates: edge } : { anchors: edge };
  const answer = feasiblePositions(
    footprintOf(job, position, how),
    { outline: job.bay.outline!, sides: sideNames(job.bay), clear, free: ["vehicle"] },
    constraints,
    [turnOf(stand)],
  );
  return isUnable(answer) ? answer.reason : answer[0]!;
};

export const wayOf = (
  job: Job,
  { stand, wayIn: how, placement }: SolvedWay,
  pose: Pose,
  constraints: readonly Constraint[],
): Way => {
  const regions = placement.regions.flatMap((region): PlaceRegion[] => {
    const roomiest = deepestPlace(region, 1, pose.middle);
    if (!roomiest) return [];
    const area = polygonArea(region.outline) - region.holes.reduce((sum, hole) => sum + polygonArea(hole), 0);
    return [{ ...region, area, roomiest, away: distance(nearestPlace(pose.middle, region), pose.middle) }];
  });
  const closed = closedWindows(pose.middle, placement).map(({ at, distance: away, blocks }): ClosedWay => {
    const blockers = blockersOf(job, constraints, blocks, at);
    const words = moveWords(at.x - pose.middle.x, at.y - pose.middle.y, job.units);
    return { at, away, blockers, sentence: `Moved ${words}: ${blockers.map(({ sentence }) => sentence).join(" ")}` };
  });
  const backed = how === "backed-in" ? ", the vehicle backed in" : "";
  return {
    stand,
    words: standWords[stand] + backed,
    regions: regions.toSorted((a, b) => a.away - b.away),
    closed,
  };
};
