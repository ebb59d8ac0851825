export { boundFactor, boundFromLowerLimits, lowerFractileBound } from "./censored-bound.ts";
export { type CensoredFit, fitCensored } from "./censored-fit.ts";
export { type MoreReadings, moreReadings } from "./more-readings.ts";
export { type Reading, spanOf } from "./reading.ts";
export { describeSample, type Sample } from "./sample.ts";
export { noSpreadPrior, type SpreadPrior, slabSurveys } from "./spread-prior.ts";
export { findThicknessStep, type PlacedValue, type StepFinding } from "./thickness-step.ts";
export { type Claim, lowerToleranceBound, type ToleranceBound } from "./tolerance-bound.ts";
export { oneSidedToleranceFactor, twoSidedToleranceFactor } from "./tolerance-factor.ts";
