import type { AnchorWatch } from "@floorworthy/engine/bolts";
import type { UnitSystem } from "@floorworthy/engine/quantities";
import type { AnchorAnswer, RoundReading } from "./anchor-history.ts";
import { printMovement, printTorque } from "./printed.ts";
import { watchWords } from "./watch-words.ts";

export interface AnchorEvidence {
  readonly anchor: string;
  readonly units: UnitSystem;
  readonly rounds: readonly RoundReading[];
  /** undefined where movement cannot be told */
  readonly watch: AnchorWatch | undefined;
  /** all of it, also before the count began, mm */
  readonly moved: number;
  readonly limit: number;
  readonly setTo: number | undefined;
  /** days over which a slip is carried on */
  readonly ahead: number;
}

interface Finding {
  readonly answer: AnchorAnswer;
  readonly words: string;
}

/** Every finding about one anchor, most serious first. Rules: common practice of the trade, no source. */
export const findingsOf = (evidence: AnchorEvidence): Finding[] => {
  if (evidence.rounds.length === 0) return [{ answer: "not-read", words: `${evidence.anchor} has not been read.` }];
  const found = [...brokenOf(evidence), ...movementOf(evidence), ...hollowOf(evidence), ...torqueOf(evidence)];
  return found.toSorted((a, b) => gravity.indexOf(a.answer) - gravity.indexOf(b.answer));
};

export const gravity: readonly AnchorAnswer[] = ["out-of-service", "retorque-and-look", "not-read", "sound"];

const last = <K extends "state" | "sound">(rounds: readonly RoundReading[], key: K): RoundReading[K] =>
  rounds.findLast((round) => round[key] !== undefined)?.[key];

const brokenOf = ({ anchor, rounds }: AnchorEvidence): Finding[] => {
  const words = {
    spins: `${anchor} spins without taking torque: it holds nothing.`,
    snapped: `${anchor} is snapped.`,
    missing: `${anchor} is missing.`,
  };
  const state = last(rounds, "state");
  return state === undefined || state === "holds" ? [] : [{ answer: "out-of-service", words: words[state] }];
};

const hollowOf = ({ anchor, rounds }: AnchorEvidence): Finding[] =>
  last(rounds, "sound") === "hollow"
    ? [
        {
          answer: "out-of-service",
          words: `The concrete around ${anchor} sounds hollow: it has let go there, and nobody can see how far.`,
        },
      ]
    : [];

/** A first round that takes up less than this part of the limit is the usual first re-torque. */
const FIRST_ROUND = 0.25;

/**
 * A slipping pattern closes the lift once it has moved half the limit, or a third and would pass the limit before the
 * next round. Below that it may be the hand and the wrench: a look, and a round within a month. Of 60 invented lifts whose
 * ten anchors only relax none is closed so, read well or badly; of those that slip 93 to 100 % are (docs/sources/bolts.md).
 */
const CLOSE = 1 / 2;
const SHOWN = 1 / 3;

const movementOf = (evidence: AnchorEvidence): Finding[] => {
  const { anchor, watch, units, moved, limit, ahead, rounds } = evidence;
  if (watch === undefined)
    return [
      { answer: "retorque-and-look", words: `${anchor}: its movement cannot be told from the turns of its nut.` },
    ];
  const why = watch.reasons.map((reason) => watchWords[reason]).join("; ");
  const how = `${printMovement(moved, units)} of movement over ${rounds.length} round${rounds.length === 1 ? "" : "s"}`;
  const say = (answer: AnchorAnswer, words: string): Finding[] => [{ answer, words }];
  switch (watch.verdict) {
    case "beyond-limit":
      return say(
        "out-of-service",
        `${anchor} has moved beyond the limit of ${printMovement(limit, units)}: ${how}; ${why}.`,
      );
    case "slipping": {
      const carried = moved + (watch.fit?.rate ?? 0) * ahead;
      const grave = moved > CLOSE * limit || (carried > limit && moved > SHOWN * limit);
      return grave
        ? say("out-of-service", `${anchor} slips: ${how}; ${why}.`)
        : say("retorque-and-look", `${anchor} may be slipping, so far only ${how}; ${why}.`);
    }
    case "undecided":
      return rounds.length === 1 && moved <= FIRST_ROUND * limit
        ? say("sound", `${anchor}: ${how}, as a first re-torque has it; one round tells no pattern yet.`)
        : say("retorque-and-look", `${anchor} cannot be called sound: ${how}; ${why}.`);
    case "settling":
      return say("sound", `${anchor} settles: ${how}; ${why}.`);
  }
};

/** Half the torque or less, found and not brought back. */
const LOW = 0.5;

const torqueOf = ({ anchor, rounds, setTo, units }: AnchorEvidence): Finding[] => {
  const round = rounds[rounds.length - 1]!;
  if (setTo === undefined || round.found === undefined || round.found > LOW * setTo) return [];
  const said = `${anchor} was found at ${printTorque(round.found, units)} of ${printTorque(setTo, units)}`;
  return round.turned === undefined
    ? [
        {
          answer: "retorque-and-look",
          words: `${said} and not brought back. That is common after a year or two and no cause for panic; re-torque it and look.`,
        },
      ]
    : [];
};
