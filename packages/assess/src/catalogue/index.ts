export type { LiftFinding, NextStep } from "./finding.ts";
export { judgeLift } from "./judge-lift.ts";
export { type Catalogue, judgeLifts, judgeLiftsSteps, liftsOf } from "./judge-lifts.ts";
export { judgeLoose, type LooseJudgement } from "./loose-lift.ts";
