import { type Check, isUnable, type Term } from "@floorworthy/engine/quantities";
import type { Job, Vehicle } from "@floorworthy/job";
import { assess } from "../assess.ts";
import type { Assessment, MarginCheck } from "../assessment.ts";
import { basisWords } from "../facts/known.ts";
import { shown, term } from "../facts/print.ts";
import { heaviestBefore } from "../upkeep/round-due.ts";
import { type Upkeep, upkeepOf } from "../upkeep/upkeep.ts";
import { armShares, armsOver } from "./arm-shares.ts";
import type { HeightLoads } from "./by-height.ts";
import { type FloorUnder, floorUnder, type GoverningSide } from "./floor-under.ts";
import { type VehicleFacts, vehicleFacts } from "./vehicle-facts.ts";

/** yes: nothing here forbids it; retorque-first: a round of the nuts comes before; hold: something must be known first. */
export type VehicleWord = "yes" | "retorque-first" | "hold" | "no";

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
  const calm = `${shown(facts.weight!.high, "force", job.units)} is within the rated load, the floor meets the maker's page, and no round of the nuts is due.`;
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

type Refusal = readonly [VehicleWord, ...string[]];

const stopped = ({ stops }: Assessment): Refusal | undefined =>
  stops.length === 0
    ? undefined
    : [stops.every(({ outcome }) => outcome === "hold") ? "hold" : "no", ...stops.map(({ reason }) => reason)];

const notThisVehicle = (job: Job, { weight, offset, spacing, contradictions }: VehicleFacts): Refusal | undefined => {
  const { rated } = job.lift;
  if (!rated.known) return ["hold", "The rated load of the lift is not known: read it off the data plate."];
  if (!weight)
    return ["hold", "The weight of the vehicle is not known: read the door label or weigh it, axle by axle."];
  if (weight.high > rated.low)
    return [
      "no",
      `It weighs ${shown(weight.high, "force", job.units)}; the lift is rated for ${shown(rated.low, "force", job.units)}. No floor and no care makes up for that.`,
    ];
  const off = Math.max(Math.abs(offset[0]), Math.abs(offset[1]));
  if (off >= spacing.low / 2)
    return [
      "no",
      `Its centre of gravity stands ${shown(off, "length", job.units)} off the line of the columns, outside the lifting points (${shown(spacing.low / 2, "length", job.units)} either way): it would tip off.`,
    ];
  return contradictions.length > 0 && contradictions.some((words) => words.startsWith("The front axle"))
    ? ["hold", ...contradictions]
    : undefined;
};

/** A lighter vehicle does not excuse a floor: the maker's page speaks of the lift. */
const notThisFloor = ({ outcome, sentence }: Assessment): Refusal | undefined => {
  if (outcome === "accept" || outcome === "accept-if") return undefined;
  const word = outcome === "hold" ? "hold" : "no";
  return [
    word,
    sentence,
    "A lighter vehicle does not excuse the floor: the maker's page asks for the lift as it is rated.",
  ];
};

/** Why a round of the nuts comes before this vehicle. */
const roundFirst = (
  job: Job,
  vehicle: Vehicle,
  { weight }: VehicleFacts,
  { next, lastRound, answer, reasons }: Upkeep,
): string[] => {
  if (!job.installation && job.visits.length === 0)
    return ["There is no record that the lift is set and its nuts are at their torque."];
  if (answer === "no-readings" && !job.installation?.date)
    return ["No round of the nuts is written down, nor the day the lift was set."];
  const heaviest = lastRound
    ? heaviestBefore({ ...job, vehicles: job.vehicles.filter((v) => v !== vehicle) }, lastRound)
    : 0;
  const fresh = vehicle.since === undefined ? !job.vehicles.includes(vehicle) : vehicle.since > (lastRound ?? "");
  const heavier = lastRound !== undefined && fresh && heaviest > 0 && weight !== undefined && weight.high > heaviest;
  return [
    ...(next && next.standing !== "ahead" ? [`The round of ${next.date} is due: ${next.reason.words}.`] : []),
    ...(heavier
      ? [
          `It is heavier than anything lifted before the last round (${shown(heaviest, "force", job.units)}, ${lastRound}).`,
        ]
      : []),
    ...(answer === "retorque-and-look" ? reasons.filter((words) => !words.startsWith("The round of")) : []),
  ];
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

const ratedCheck = ({ lift, units }: Job, { weight }: VehicleFacts): Check | undefined => {
  const { rated } = lift;
  if (!rated.known || !weight) return undefined;
  return {
    id: "rated-load",
    title: "Weight against the rated load",
    demand: term("W", "weight of the vehicle", weight.high, "force", units, { basis: basisWords(weight.basis) }),
    capacity: term("Wr", "rated load of the lift", rated.low, "force", units, { basis: basisWords(rated.basis) }),
    ratio: weight.high / rated.low,
    clause: "the lift's data plate",
  };
};

const placeTerms = (job: Job, { behindFrontAxle }: VehicleFacts): Term[] =>
  behindFrontAxle === undefined
    ? []
    : [
        term(
          "x",
          "centre of gravity behind the front axle; the line of the columns belongs there",
          behindFrontAxle,
          "length",
          job.units,
          {
            formula: "wheelbase × rear axle / weight",
            basis: "statics; tools and cargo move it",
          },
        ),
      ];

const conditionsFor = (job: Job, facts: VehicleFacts, { conditions, outcome }: Assessment): string[] => [
  ...facts.contradictions,
  ...[armsOver(job, facts)].filter((words) => words !== undefined),
  "Pads at the maker's lifting points, arm restraints in, the centre of gravity between the columns.",
  "A foot off the floor: stop, shake it, look at every base and pad; then go on.",
  ...(outcome === "accept-if" ? conditions : []),
];
