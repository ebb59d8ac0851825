export { type PlanOptions, planDrawing } from "./plan-drawing.ts";
export { planGround } from "./plan-ground.ts";
export { type Scale, scales, scaleToFit } from "./scales.ts";
