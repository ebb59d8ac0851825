export { bagsFor, bagYield } from "./bags.ts";
export { type BarLayout, type BarRun, barLayout, barRun, type ClearWindow } from "./bar-layout.ts";
export { type BarSize, barArea, barDiameter, barPerimeter, barSizes, barsPerWidth, barWeight } from "./bars.ts";
export { type ConcreteOrder, concreteOrder, excessShare, type OrderTerms } from "./concrete-order.ts";
export { type MixingPlan, mixersNeeded, placingGuard, TRUCK_DISCHARGE_HOURS } from "./placing-guard.ts";
export { dragSteel, jointlessSteel, steelDepth } from "./shrinkage-steel.ts";
export { baseCourse, dowelGlue, fibreBags, outlineLength, vapourRetarder } from "./under-slab.ts";
export { type Sheet, sheetsFor, wirePerWidth, wireWeight } from "./welded-wire.ts";
