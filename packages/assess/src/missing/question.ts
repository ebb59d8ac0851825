import type { Job, KnownChoice, KnownQuantity } from "@floorworthy/job";
import type { MissingFact } from "../assessment.ts";

/** Something nobody knows yet, how to find it out, and the job as it would be at the worst and the best answer. */
export interface Question extends Pick<MissingFact, "id" | "what" | "how" | "cost" | "costClass" | "risk"> {
  readonly open: (job: Job) => boolean;
  readonly worst: (job: Job) => Job;
  readonly best: (job: Job) => Job;
}

const WHY = "to see what it would change";

export const chosen = <T extends string>(value: T): KnownChoice<T> => ({
  known: true,
  value,
  basis: { kind: "assumed", why: WHY },
});

export const amount = (value: number): KnownQuantity => ({
  known: true,
  value,
  low: value,
  high: value,
  written: "?",
  basis: { kind: "measured", how: WHY },
});

export const isStanding = (job: Job): boolean => job.floor.state === "standing";

/** A look and a question cost nothing and hurt nothing. */
export const looking = { cost: "$0, ten minutes", costClass: "free", risk: "none" } as const;
