export { type CrackFinding, crackFindings } from "./cracks.ts";
export { floorDistances, type NearestDistance } from "./distances.ts";
export { type Facts, factsOf } from "./facts.ts";
export { strengthStudy } from "./strength.ts";
export { type Survey, surveyOf } from "./survey.ts";
export { type ThicknessGroup, type ThicknessStudy, thicknessStudy } from "./thickness-study.ts";
