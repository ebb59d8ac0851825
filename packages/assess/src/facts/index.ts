export { anchoring } from "./anchoring.ts";
export { crackFindings } from "./cracks.ts";
export { floorDistances } from "./distances.ts";
export { type Facts, factsOf } from "./facts.ts";
export { strengthStudy } from "./strength.ts";
export type { StrengthFinding } from "./strength-finding.ts";
export { surveyOf } from "./survey.ts";
export type { CrackFinding, NearestDistance, Survey, ThicknessGroup, ThicknessStudy } from "./survey-answer.ts";
export { thicknessStudy } from "./thickness-study.ts";
