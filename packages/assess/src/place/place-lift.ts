import { distance, type Point, polygonArea } from "@floorworthy/engine/geometry";
import {
  blockedBy,
  closedWindows,
  deepestPlace,
  feasiblePositions,
  nearestPlace,
  type Obstacle,
  type Placement,
  smallestMove,
} from "@floorworthy/engine/placement";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job, Position } from "@floorworthy/job";
import { boxOf } from "../layout.ts";
import { stopsOf } from "../stops/stops.ts";
import { anchoring, liftsStop } from "./anchoring.ts";
import { sideNames } from "./bay-sides.ts";
import { blockerNames, blockersOf } from "./blockers.ts";
import { asked, type Constraint, constraintsOf } from "./constraints.ts";
import { fitsOf } from "./fits.ts";
import { footprintOf, type Pose, poseOf, shapeMissing } from "./footprint.ts";
import { moveWords } from "./move-words.ts";
import { notesOf } from "./notes.ts";
import type { ClosedWay, PlaceMove, PlaceRegion, Placing, Stand, Way } from "./placing.ts";
import { practicalMark } from "./practical-mark.ts";
import { rangesOf } from "./ranges.ts";
import { placeAt, standWords, turnOf, type WayIn, wayIn } from "./stands.ts";

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

interface Solved {
  readonly stand: Stand;
  readonly wayIn: WayIn;
  readonly placement: Placement;
}

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
  const ways: Solved[] = [];
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

const solve = (
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

const wayOf = (
  job: Job,
  { stand, wayIn: how, placement }: Solved,
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

const moveOf = (job: Job, position: Position, pose: Pose, stand: Stand, middle: Point): PlaceMove => {
  const [dx, dy] = [middle.x - pose.middle.x, middle.y - pose.middle.y];
  return {
    ...placeAt(position, pose, stand, middle),
    dx,
    dy,
    distance: Math.hypot(dx, dy),
    words: moveWords(dx, dy, job.units),
  };
};

/** The place with most room in the area nearest to the wanted place, on a whole step from there where the room allows it. */
const roomiestOf = (job: Job, way: Way, pose: Pose, moveTo: (p: Point) => PlaceMove): PlaceMove | undefined => {
  const own = way.regions[0];
  if (!own) return undefined;
  const { at, room } = own.roomiest;
  const step = job.units === "si" ? 10 : 12.7;
  const whole = (v: number, from: number): number => from + Math.round((v - from) / step) * step;
  return moveTo(room > step ? { x: whole(at.x, pose.middle.x), y: whole(at.y, pose.middle.y) } : at);
};

const proposedOf = (
  job: Job,
  { placement, stand }: Solved,
  pose: Pose,
  position: Position,
  nearest: Point,
  constraints: readonly Constraint[],
): Point => {
  if (distance(nearest, pose.middle) < 1e-9) return pose.middle;
  const left = placeAt(position, pose, stand, nearest).position.left;
  const practices = new Set(constraints.filter(({ standing }) => standing === "practice").map(({ id }) => id));
  const mark = practicalMark({
    placement,
    nearest,
    wanted: pose.middle,
    toLeft: { x: left.x - nearest.x, y: left.y - nearest.y },
    units: job.units,
    makers: ({ id, part }) => !practices.has(id) && (part === "anchors" || part === "plates"),
  });
  if (mark) return mark;
  const own = placement.regions.toSorted(
    (a, b) => distance(nearestPlace(nearest, a), nearest) - distance(nearestPlace(nearest, b), nearest),
  )[0];
  return (own && deepestPlace(own, 0.1)?.at) ?? nearest;
};

const hereWords = ({ lift }: Job): string =>
  `It may stand here: ${anchoring(lift) === "loose" ? "what stands on the floor" : "every anchor and plate"} keeps the distances asked, and the vehicle has its room.`;

const moveSentence = (job: Job, move: PlaceMove, exact: PlaceMove | undefined, ranges: Placing["ranges"]): string => {
  const turn = move.stand === "as-wanted" ? "" : `, ${standWords[move.stand]}`;
  if (!job.position) return `Nobody said where it is wanted. The roomiest place is the one shown${turn}.`;
  const least = exact && Math.abs(exact.distance - move.distance) > 0.5 ? ` The smallest move is ${exact.words}.` : "";
  const along = Math.abs(move.dy) >= Math.abs(move.dx) ? "y" : "x";
  const range = ranges.find(({ axis }) => axis === along);
  const window = range ? ` Along this line it may stand ${lower(range.sentence)}` : "";
  const what = move.distance < 0.5 ? "Turn it" : `Move it ${move.words}`;
  return `${what}${turn}.${least}${window}`;
};

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const nowhereWords = (blockers: Placing["blockers"], ways: readonly Way[]): string => {
  const closed = ways[0]!.closed;
  const names = blockerNames([...blockers, ...closed.flatMap((way) => way.blockers)]);
  return `There is no place in this bay: ${names || "the lift with its distances is larger than the bay"}.`;
};

export const areaWords = (mm2: number, units: Job["units"]): string =>
  units === "si" ? `${(mm2 / 1e6).toFixed(2)} m²` : `${(mm2 / 92903.04).toFixed(1)} sq ft`;
