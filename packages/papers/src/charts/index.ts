export { torqueTrendSheet } from "./torque-trend.ts";
