import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { placedBases } from "../layout.ts";
import { ageOf } from "./age.ts";
import { type StrengthFinding, strengthUnder } from "./strength.ts";
import { type BaseThickness, thicknessUnder } from "./thickness.ts";

/** What a job's facts come to before anything is judged: per base in the order of `bases`. */
export interface Facts {
  readonly bases: readonly PlacedBase[];
  readonly thickness: readonly BaseThickness[];
  readonly strength: readonly StrengthFinding[];
  readonly age: { readonly days: number | undefined; readonly poured: string | undefined };
}

export const factsOf = (job: Job): Facts => {
  const bases = placedBases(job);
  const thickness = bases.map((base) => thicknessUnder(job, base));
  return {
    bases,
    thickness,
    strength: thickness.map(({ zone }) => strengthUnder(job, zone)),
    age: ageOf(
      job,
      thickness.map(({ zone }) => zone),
    ),
  };
};
