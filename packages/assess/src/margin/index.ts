export { type BreakoutOutline, breakoutOutlines } from "./breakout-outlines.ts";
export { type MomentByHeight, momentByHeight } from "./moment-by-height.ts";
export { type StressField, stressField } from "./stress-field.ts";
