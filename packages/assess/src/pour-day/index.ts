export type { Curing } from "./curing.ts";
export type { Evaporation } from "./evaporation.ts";
export type { LimitAnswer } from "./limits.ts";
export { type PourDay, pourDay } from "./pour-day.ts";
export type { Weather } from "./weather.ts";
export type { HoursWindow, PourWindows } from "./windows.ts";
