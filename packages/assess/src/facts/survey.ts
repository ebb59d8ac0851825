import type { Job } from "@floorworthy/job";
import { type CrackFinding, crackFindings } from "./cracks.ts";
import { floorDistances, type NearestDistance } from "./distances.ts";
import { strengthStudy } from "./strength.ts";
import type { StrengthFinding } from "./strength-finding.ts";
import { type ThicknessStudy, thicknessStudy } from "./thickness-study.ts";

/** What the survey of the floor comes to, beside the lines of the maker's page. */
export interface Survey {
  readonly thickness: ThicknessStudy;
  readonly strength: readonly (StrengthFinding & { readonly under: string })[];
  readonly distances: readonly NearestDistance[];
  readonly cracks: readonly CrackFinding[];
}

export const surveyOf = (job: Job): Survey => ({
  thickness: thicknessStudy(job),
  strength: strengthStudy(job),
  distances: floorDistances(job),
  cracks: crackFindings(job),
});
