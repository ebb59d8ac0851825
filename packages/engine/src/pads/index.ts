export type { OffsetCorner, Pad, PadPlan, PadSides } from "./pad.ts";
export { type OutlineLevel, padOutlines } from "./pad-outline.ts";
export { type PadRects, padRects } from "./pad-rects.ts";
export { growthAtSlab, type PadVolume, padVolume } from "./pad-volume.ts";
export { type PlanArea, planArea } from "./plan-area.ts";
export { type Layer, solidVolume } from "./solid-volume.ts";
