import type { Job } from "@floorworthy/job";
import { crackFindings } from "./cracks.ts";
import { floorDistances } from "./distances.ts";
import { strengthStudy } from "./strength.ts";
import type { Survey } from "./survey-answer.ts";
import { thicknessStudy } from "./thickness-study.ts";

/** The survey of a floor, read: thickness as statistics, strength as evidence, distances by name, cracks by what they say. */
export const surveyOf = (job: Job): Survey => ({
  thickness: thicknessStudy(job),
  strength: strengthStudy(job),
  distances: floorDistances(job),
  cracks: crackFindings(job),
});
