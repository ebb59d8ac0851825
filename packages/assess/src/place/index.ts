export { jobAt } from "./job-at.ts";
export { layoutAt } from "./layout-at.ts";
export { liftsStop } from "./lifts-stop.ts";
export {
  type MapOptions,
  type MapPoint,
  type MapProgress,
  type MarginMap,
  marginMap,
  marginMapSteps,
} from "./margin-map.ts";
export { type PlaceOptions, placeLift } from "./place-lift.ts";
export type {
  Blocker,
  ClosedWay,
  Fit,
  Place,
  PlaceMove,
  PlaceRange,
  PlaceRegion,
  Placing,
  Stand,
  Way,
} from "./placing.ts";
export { areaWords } from "./placing-words.ts";
