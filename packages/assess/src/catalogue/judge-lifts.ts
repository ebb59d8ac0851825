import type { Job, Lift } from "@floorworthy/job";
import type { LiftFinding } from "./finding.ts";
import { judgeLift } from "./judge-lift.ts";

/** Which lift for this floor: those that may stand first, each group by rated load. */
export interface Catalogue {
  readonly findings: readonly LiftFinding[];
  readonly state: "complete" | "cancelled";
  readonly notes: readonly string[];
}

/** The job's own lift, those it names beside it, and more; of one name the first. */
export const liftsOf = (job: Job, more: readonly Lift[] = []): readonly Lift[] => {
  const all = [job.lift, ...job.choices.lifts, ...more];
  return all.filter((lift, i) => all.findIndex(({ name }) => name === lift.name) === i);
};

/** One lift after another, so that the caller may show progress or stop. */
export function* judgeLiftsSteps(
  job: Job,
  lifts: readonly Lift[],
): Generator<{ readonly done: number; readonly of: number }, Catalogue, "go-on" | "stop" | undefined> {
  const findings: LiftFinding[] = [];
  let state: Catalogue["state"] = "complete";
  for (const lift of lifts) {
    findings.push(judgeLift(job, lift));
    if ((yield { done: findings.length, of: lifts.length }) === "stop" && findings.length < lifts.length) {
      state = "cancelled";
      break;
    }
  }
  return { findings: findings.toSorted(inOrder), state, notes: NOTES };
}

export const judgeLifts = (job: Job, lifts: readonly Lift[] = liftsOf(job)): Catalogue => {
  const steps = judgeLiftsSteps(job, lifts);
  let step = steps.next();
  while (!step.done) step = steps.next("go-on");
  return step.value;
};

const NOTES = [
  "Every lift is judged at its full rated load, whatever is meant to be lifted: only its maker may give it another, and no sticker makes a floor stronger.",
  "The maker's page decides; the margin is advice and stands beside it.",
];

const ranks: Readonly<Record<LiftFinding["standing"], number>> = {
  "may-stand": 0,
  "after-move": 1,
  "not-yet": 2,
  no: 3,
};

const loadOf = ({ rated }: LiftFinding): number => (rated.known ? rated.value : 0);

const inOrder = (a: LiftFinding, b: LiftFinding): number =>
  ranks[a.standing] - ranks[b.standing] || loadOf(b) - loadOf(a) || a.name.localeCompare(b.name, "en");
