export type { BarMat, LaidBar } from "./bar-mats.ts";
export { clearWindow, windowDepth, windowMargin } from "./clear-windows.ts";
export type { BagsOrTruck, Cost, MixLine, Order, OrderGroup, OrderLine } from "./order.ts";
export { type OrderWishes, orderFor } from "./order-for.ts";
export { type PourPart, pourParts } from "./pour-parts.ts";
