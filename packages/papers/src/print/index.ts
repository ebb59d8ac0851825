export { dayAfter } from "./calendar-day.ts";
export { printFeet, printLength, printStress, printTemperature, printVolume, type UnitSystem } from "./measure.ts";
export { printTerm } from "./term.ts";
