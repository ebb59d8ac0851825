import { type Term, toBase } from "@floorworthy/engine/quantities";
import type { Job, Lift } from "@floorworthy/job";
import { assess } from "../assess.ts";
import type { Assessment, Outcome, Remedy } from "../assessment.ts";
import { anchoring } from "../facts/anchoring.ts";
import { jobAt } from "../place/job-at.ts";
import { placeLift } from "../place/place-lift.ts";
import type { LiftFinding, Money, NextStep } from "./finding.ts";
import { judgeLoose } from "./loose-lift.ts";
import { withLift } from "./with-lift.ts";

/** One lift on this job's floor, at its full rated load, where the job's lift was wanted. */
export const judgeLift = (floor: Job, lift: Lift): LiftFinding => {
  const job = withLift(floor, lift);
  const common = {
    name: lift.name,
    kind: lift.kind,
    rated: lift.rated,
    anchoring: anchoring(lift),
    tooHeavy: tooHeavy(job),
  };
  if (common.anchoring === "loose") {
    const { placing, ...judged } = judgeLoose(job);
    const next = nextOf(job, judged.outcome, judged.conditions, [], placing?.proposed?.words);
    return {
      ...common,
      ...judged,
      standing: standingOf(judged.outcome, judged.outcome === "shift" ? "accept-if" : undefined),
      next,
    };
  }
  const assessment = assess(job);
  const moved = assessment.outcome === "shift" ? afterMove(job) : undefined;
  const cured = moved !== undefined && standingOf(moved.assessment.outcome, undefined) === "may-stand";
  // a move that cures nothing is no advice: what is wrong at the new place decides
  const said = moved && !cured ? moved.assessment : assessment;
  const { outcome, reasons, remedies } = said;
  return {
    ...common,
    page: said.page.verdict,
    margin: (cured ? moved.assessment : said).margin.verdict,
    outcome,
    standing: standingOf(outcome, cured ? moved.assessment.outcome : undefined),
    sentence: cured ? `${moved.words} Then: ${moved.assessment.sentence}` : said.sentence,
    reasons,
    conditions: cured ? moved.assessment.conditions : said.conditions,
    next: nextOf(job, outcome, said.conditions, remedies, cured ? moved.move : undefined),
  };
};

interface Moved {
  readonly words: string;
  readonly move: string;
  readonly assessment: Assessment;
}

const afterMove = (job: Job): Moved | undefined => {
  const { proposed, sentence } = placeLift(job, { fits: "aside" });
  if (!proposed) return undefined;
  return { words: sentence, move: proposed.words, assessment: assess(jobAt(job, proposed)) };
};

const standingOf = (outcome: Outcome, after: Outcome | undefined): LiftFinding["standing"] => {
  if (outcome === "accept" || outcome === "accept-if") return "may-stand";
  if (outcome === "shift") return after === "accept" || after === "accept-if" ? "after-move" : "no";
  return outcome === "hold" || outcome === "wait" ? "not-yet" : "no";
};

const nextOf = (
  job: Job,
  outcome: Outcome,
  conditions: readonly string[],
  remedies: readonly Remedy[],
  move: string | undefined,
): NextStep => {
  const smallest = remedies
    .filter((remedy) => remedy.volume !== undefined)
    .toSorted((a, b) => a.volume!.value - b.volume!.value)[0];
  switch (outcome) {
    case "accept":
      return { kind: "nothing", words: "Nothing." };
    case "accept-if":
    case "hold":
      return { kind: "show", words: conditions[0] ?? "Show what is not known." };
    case "wait":
      return { kind: "wait", words: conditions[0] ?? "Wait." };
    case "shift":
      return move
        ? { kind: "move", words: `Move it ${move}.` }
        : { kind: "another-bay", words: "Another bay, or pads across what is in the way." };
    case "pour":
      return smallest?.volume
        ? { kind: "pour", words: smallest.title, volume: smallest.volume, ...costOf(job, smallest.volume) }
        : { kind: "pour", words: conditions[0] ?? "New concrete under the columns." };
    case "lighter-lift":
      return { kind: "another-bay", words: "A lower lift, or another bay." };
    default:
      return { kind: "engineer", words: "Nothing before a licensed engineer has looked." };
  }
};

/** Concrete only, at the job's own quote; nothing where there is none. */
const costOf = ({ prices }: Job, volume: Term): { readonly cost?: Money } => {
  if (!prices.concrete.known) return {};
  const value = prices.concrete.value * toBase(volume.value, volume.unit);
  const worked = `${prices.concrete.written} × ${volume.value.toFixed(2)} ${volume.unit}`;
  return {
    cost: {
      value,
      currency: prices.currency ?? "$",
      words: "concrete alone, without cutting, steel and labour",
      worked,
    },
  };
};

const tooHeavy = ({ vehicles, lift }: Job): string[] => {
  const { rated } = lift;
  if (!rated.known) return [];
  return vehicles.flatMap(({ name, weight }) => (weight.known && weight.high > rated.value ? [name] : []));
};
