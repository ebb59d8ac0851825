export type {
  Anchor,
  AnchorAssessment,
  AnchorConcrete,
  AnchorMode,
  AnchorProduct,
  Barrier,
  SlabPiece,
} from "./anchor-group.ts";
export { breakoutRegion } from "./breakout-region.ts";
export { checkAnchorGroup } from "./check-anchor-group.ts";
export { effectiveDepth } from "./effective-depth.ts";
export { type NearestBarrier, nearestBarrier } from "./nearest-barrier.ts";
