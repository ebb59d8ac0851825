export { type BaseShims, type Bedding, type ShimPlace, type ShimPlan, shimPlan } from "./shim-plan.ts";
export type { Stack } from "./stack.ts";
