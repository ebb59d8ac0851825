export { oneWayShear, twoWayShear } from "./ch11-shear.ts";
