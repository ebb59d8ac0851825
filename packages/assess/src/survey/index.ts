export { planSurvey } from "./plan-survey.ts";
export type { Kept, Look, SurveyHole, SurveyPlan } from "./survey-plan.ts";
export { anchorClear } from "./things-in-the-floor.ts";
export { tapeWords, termWords } from "./words.ts";
