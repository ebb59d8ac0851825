export {
  type AnchorWatch,
  usualWatchRules,
  type WatchReason,
  type WatchRules,
  type WatchVerdict,
  watchAnchor,
} from "./anchor-watch.ts";
export { type ControlLimit, controlLimit } from "./control-limit.ts";
export { fastestSlip, type MovementFit, type ReadingError, usualReadingError } from "./movement-fit.ts";
export { type NutAndWasher, nutAndWasher } from "./nuts.ts";
export { relaxationPerDecade, retainedPreload, retainedSpan } from "./relaxation.ts";
export { coarseThread, nutTravel, stressArea, type Thread, threads } from "./threads.ts";
export {
  anchorCategory,
  nutFactors,
  preloadFrom,
  preloadSpan,
  settingWithExtension,
  type ThreadSurface,
  torqueFor,
  torqueWithExtension,
} from "./torque.ts";
export { type Movement, totalMovement, type Visit } from "./visit.ts";
