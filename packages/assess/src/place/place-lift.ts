import type { Point } from "@floorworthy/engine/geometry";
import { blockedBy, type Obstacle, smallestMove } from "@floorworthy/engine/placement";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job, Position } from "@floorworthy/job";
import { boxOf } from "../layout.ts";
import { stopsOf } from "../stops/stops.ts";
import { blockersOf } from "./blockers.ts";
import { type Constraint, constraintsOf } from "./constraints.ts";
import { fitsOf } from "./fits.ts";
import { poseOf, shapeMissing } from "./footprint.ts";
import { liftsStop } from "./lifts-stop.ts";
import { notesOf } from "./notes.ts";
import type { PlaceMove, Placing, Stand, Way } from "./placing.ts";
import { hereWords, moveSentence, nowhereWords } from "./placing-words.ts";
import { moveOf, proposedOf, roomiestOf } from "./proposed-place.ts";
import { rangesOf } from "./ranges.ts";
import { type SolvedWay, solve, wayOf } from "./solved-way.ts";
import { placeAt, wayIn } from "./stands.ts";

export interface PlaceOptions {
  /** ways of standing to look at; as wanted and, where the vehicle gets in that way too, the others */
  readonly stands?: readonly Stand[];
  /** more to keep away from, such as a bar that was hit or an old hole */
  readonly also?: readonly Obstacle[];
  /** heights and widths that no place cures: they rule the lift out, or stand aside; counted unless said otherwise */
  readonly fits?: "counted" | "aside";
}

/**
 * Where the lift may stand: every distance of the maker's page to joints, cracks, edges, walls; thickness steps, footings
 * and pipes; and the vehicle's way in and room in the bay. Pure. Under a stop that forbids drilling nothing is placed.
 */
export const placeLift = (job: Job, options: PlaceOptions = {}): Placing => {
  const stop = stopsOf(job).find((s) => liftsStop(job.lift, s) === "stops");
  if (stop) return without("stopped", `Nothing is placed: ${stop.reason} ${stop.next}`, job);
  if (!job.bay.outline) return without("not-known", "Not known: the plan of the floor.", job);
  const missing = shapeMissing(job.lift);
  if (missing) return without("not-known", `Not known: ${missing} of this lift.`, job);
  const position = job.position ?? middleOfBay(job);
  if (!position) return without("not-known", "Not known: the spacing of the columns, or where they are wanted.", job);
  return placed(job, position, options);
};

const without = (answer: Placing["answer"], sentence: string, job: Job): Placing => ({
  answer,
  sentence,
  wanted: undefined,
  blockers: [],
  smallest: undefined,
  proposed: undefined,
  roomiest: undefined,
  ranges: [],
  ways: [],
  fits: answer === "stopped" ? [] : fitsOf(job),
  notes: [],
});

/** Nobody said where: across the bay, about its middle. */
const middleOfBay = ({ bay, lift }: Job): Position | undefined => {
  const box = boxOf(bay.outline ?? []);
  const half = lift.spacing.known ? lift.spacing.value / 2 : lift.supports.length > 0 ? 500 : undefined;
  if (half === undefined) return undefined;
  const [x, y] = [(box.x0 + box.x1) / 2, (box.y0 + box.y1) / 2];
  return { left: { x: x - half, y }, right: { x: x + half, y } };
};

/** Turning a symmetric lift that nothing stands on changes nothing. */
const standsFor = ({ lift, vehicles }: Job): readonly Stand[] =>
  vehicles.length === 0 && lift.supports.length === 0 && !(lift.arms.known && lift.arms.value === "asymmetric")
    ? ["as-wanted"]
    : ["as-wanted", "turned-about", "quarter-left", "quarter-right"];

const placed = (
  job: Job,
  position: Position,
  { stands = standsFor(job), also = [], fits: weigh = "counted" }: PlaceOptions,
): Placing => {
  const pose = poseOf(position);
  const constraints = [...constraintsOf(job), ...also.map((o): Constraint => ({ ...o, standing: "practice" }))];
  const ways: SolvedWay[] = [];
  for (const stand of stands) {
    const how = wayIn(job.bay, pose, stand);
    if (how === "none") continue;
    const placement = solve(job, position, stand, how, constraints);
    if (typeof placement === "string") return without("not-known", `Not known: ${placement}.`, job);
    ways.push({ stand, wayIn: how, placement });
  }
  if (ways.length === 0)
    return without("nowhere", "There is no place: no way of standing lets the vehicle in straight.", job);
  const fits = fitsOf(job);
  const tooLarge =
    weigh === "aside" ? [] : fits.filter(({ result, weight }) => result === "does-not-fit" && weight === "decides");
  const said = ways.map((way): Way => wayOf(job, way, pose, constraints));
  const first = ways[0]!;
  const blockers = blockersOf(job, constraints, blockedBy(first.placement, pose.middle), pose.middle);
  const asWanted = job.position !== undefined;
  const chosen = ways.find(
    ({ placement }) => placement.regions.length > 0 || blockedBy(placement, pose.middle).length === 0,
  );
  const common = {
    wanted: asWanted ? placeAt(position, pose, "as-wanted", pose.middle) : undefined,
    blockers: asWanted ? blockers : [],
    ways: said,
    fits,
    notes: notesOf(job, ways),
  };
  const none = { smallest: undefined, proposed: undefined, roomiest: undefined, ranges: [] };
  if (tooLarge.length > 0)
    return {
      ...common,
      ...none,
      answer: "nowhere",
      sentence: `There is no place: ${tooLarge.map(({ sentence }) => sentence).join(" ")}`,
    };
  if (!chosen) return { ...common, ...none, answer: "nowhere", sentence: nowhereWords(blockers, said) };
  const moveTo = (middle: Point): PlaceMove => moveOf(job, position, pose, chosen.stand, middle);
  const roomiest = roomiestOf(job, said.find(({ stand }) => stand === chosen.stand)!, pose, moveTo);
  const nearest = smallestMove(pose.middle, [chosen.placement]);
  const exact = isUnable(nearest) ? undefined : nearest.to;
  const proposed = asWanted
    ? proposedOf(job, chosen, pose, position, exact!, constraints)
    : (roomiest?.middle ?? exact!);
  const move = moveTo(proposed);
  const ranges = rangesOf(job, chosen.placement, constraints, proposed, asWanted ? pose.middle : proposed);
  const here = chosen.stand === "as-wanted" && (!asWanted || blockers.length === 0);
  return {
    ...common,
    answer: here ? "here" : "move",
    sentence: here && asWanted ? hereWords(job) : moveSentence(job, move, exact && moveTo(exact), ranges),
    smallest: asWanted && exact ? moveTo(exact) : undefined,
    proposed: move,
    roomiest,
    ranges,
  };
};
