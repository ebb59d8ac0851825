export { describeSample, type Sample } from "./sample.ts";
export { type Claim, lowerToleranceBound, type ToleranceBound } from "./tolerance-bound.ts";
export { oneSidedToleranceFactor, twoSidedToleranceFactor } from "./tolerance-factor.ts";
