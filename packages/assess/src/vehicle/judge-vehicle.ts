import { type Check, isUnable, type Term } from "@floorworthy/engine/quantities";
import type { Job, Vehicle } from "@floorworthy/job";
import { assess } from "../assess.ts";
import type { Assessment, MarginCheck } from "../assessment.ts";
import { anchoring } from "../facts/anchoring.ts";
import { shown } from "../facts/print.ts";
import { upkeepOf } from "../upkeep/upkeep.ts";
import { armShares, armsOver } from "./arm-shares.ts";
import type { HeightLoads } from "./by-height.ts";
import type { FloorUnder, GoverningSide } from "./floor-answer.ts";
import { floorUnder } from "./floor-under.ts";
import { liftedBy } from "./lifted-by.ts";
import { notThisFloor, notThisVehicle, stopped } from "./refusals.ts";
import { roundFirst } from "./round-first.ts";
import { type VehicleFacts, vehicleFacts } from "./vehicle-facts.ts";
import { placeTerms, ratedCheck } from "./vehicle-terms.ts";
import type { VehicleWord } from "./vehicle-word.ts";

/** May this vehicle go up on this lift today. Plain data; figures are empty wherever they would be false comfort. */
export interface VehicleAnswer {
  readonly vehicle: string;
  readonly today: string;
  readonly answer: VehicleWord;
  readonly sentence: string;
  /** most important first; never empty */
  readonly reasons: readonly string[];
  /** what to do before or while lifting */
  readonly conditions: readonly string[];
  /** weight against the rated load */
  readonly rated: Check | undefined;
  readonly heights: readonly HeightLoads[];
  readonly arms: readonly Term[];
  /** centre of gravity behind the front axle: where the line of the columns belongs */
  readonly place: readonly Term[];
  /** the floor under this vehicle, worst first */
  readonly checks: readonly MarginCheck[];
  readonly side: GoverningSide | undefined;
  readonly assumed: readonly string[];
}

/** Job, vehicle and day in, answer out. Never more than the rated load; a stop gives no figure. */
export const judgeVehicle = (job: Job, vehicle: Vehicle, today: string): VehicleAnswer => {
  const facts = vehicleFacts(job, vehicle);
  const assessment = assess(job);
  const bare = {
    vehicle: vehicle.name || "the vehicle",
    today,
    conditions: [],
    rated: undefined,
    heights: [],
    arms: [],
    place: [],
    checks: [],
    side: undefined,
    assumed: facts.assumed,
  };
  const refused = stopped(assessment) ?? notThisVehicle(job, facts) ?? notThisFloor(assessment);
  if (refused) {
    const [answer, ...reasons] = refused;
    return { ...bare, answer, sentence: sentences[answer], reasons };
  }
  const floor = floorUnder(job, facts);
  const upkeep = upkeepOf(job, today);
  const first = roundFirst(job, vehicle, facts, upkeep);
  const open = isUnable(floor)
    ? [`The floor under this vehicle is not computed: ${floor.reason}`]
    : marginReasons(floor.word, floor.checks);
  const answer: VehicleWord = open.length > 0 ? "hold" : first.length > 0 ? "retorque-first" : "yes";
  const calm = `${shown(facts.weight!.high, "force", job.units)} is within the rated load, the floor meets the maker's page${anchoring(job.lift) === "loose" ? "" : ", and no round of the nuts is due"}.`;
  return {
    ...bare,
    answer,
    sentence: sentences[answer],
    reasons: [...open, ...first, ...(open.length + first.length === 0 ? [calm] : [])],
    conditions: [...(isUnable(floor) ? [] : thinWords(floor)), ...conditionsFor(job, facts, assessment)],
    rated: ratedCheck(job, facts),
    heights: isUnable(floor) ? [] : floor.heights,
    arms: armShares(job, facts),
    place: placeTerms(job, facts),
    checks: isUnable(floor) ? [] : floor.checks,
    side: isUnable(floor) ? undefined : floor.side,
  };
};

const sentences: Readonly<Record<VehicleWord, string>> = {
  yes: "Nothing here forbids lifting it today.",
  "retorque-first": "Not before a round of the nuts: re-torque first, then lift.",
  hold: "Hold: something has to be known first.",
  no: "No. Do not lift it on this lift.",
};

const marginReasons = (word: "holds" | "thin" | "short", checks: readonly MarginCheck[]): string[] => {
  const worst = checks.find(({ concrete }) => word !== "short" || concrete !== "cracked") ?? checks[0];
  if (word !== "short" || !worst) return [];
  return [
    `Published mechanics ask more of this floor than it has, also for this vehicle: ${worst.title.toLowerCase()}${worst.governs ? ` (${worst.governs})` : ""}. Have a licensed engineer look before anything is lifted.`,
  ];
};

/** Enough only while the concrete is whole: said, with what makes it more. */
const thinWords = ({ word, checks }: FloorUnder): string[] => {
  const worst = checks.find(({ concrete }) => concrete !== "uncracked");
  return word === "thin" && worst
    ? [
        `The margin is thin (${worst.title.toLowerCase()}, ${Math.round(worst.ratio * 100)} % in cracked concrete): it holds only while no crack runs near the anchors. Look for one, and set the centre of gravity on the line of the columns.`,
      ]
    : [];
};

const onPads = [
  "Pads at the maker's lifting points, arm restraints in, the centre of gravity between the columns.",
  "A foot off the floor: stop, shake it, look at every base and pad; then go on.",
];
const onAxles = [
  "Set on the lift as its manual shows: wheels chocked, or pads at the lifting points; the heavier axle where the manual wants it.",
  "A foot off the floor: stop, shake it, look at every base or foot; then go on.",
];

const conditionsFor = (job: Job, facts: VehicleFacts, { conditions, outcome }: Assessment): string[] => [
  ...facts.contradictions,
  ...[armsOver(job, facts)].filter((words) => words !== undefined),
  ...(liftedBy(job.lift) === "pads" ? onPads : onAxles),
  ...(outcome === "accept-if" ? conditions : []),
];
