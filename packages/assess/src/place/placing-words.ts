import type { Job } from "@floorworthy/job";
import { anchoring } from "../facts/anchoring.ts";
import { blockerNames } from "./blockers.ts";
import type { PlaceMove, Placing, Way } from "./placing.ts";
import { standWords } from "./stands.ts";

export const hereWords = ({ lift }: Job): string =>
  `It may stand here: ${anchoring(lift) === "loose" ? "what stands on the floor" : "every anchor and plate"} keeps the distances asked, and the vehicle has its room.`;

export const moveSentence = (
  job: Job,
  move: PlaceMove,
  exact: PlaceMove | undefined,
  ranges: Placing["ranges"],
): string => {
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

export const nowhereWords = (blockers: Placing["blockers"], ways: readonly Way[]): string => {
  const closed = ways[0]!.closed;
  const names = blockerNames([...blockers, ...closed.flatMap((way) => way.blockers)]);
  return `There is no place in this bay: ${names || "the lift with its distances is larger than the bay"}.`;
};

export const areaWords = (mm2: number, units: Job["units"]): string =>
  units === "si" ? `${(mm2 / 1e6).toFixed(2)} m²` : `${(mm2 / 92903.04).toFixed(1)} sq ft`;
