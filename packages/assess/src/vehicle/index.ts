export type { HeightLoads } from "./by-height.ts";
export { judgeVehicle, type VehicleAnswer } from "./judge-vehicle.ts";
export { isVehicleClass, plainVehicle, type VehicleClassName, vehicleClasses, vehicleOfClass } from "./presets.ts";
export type { VehicleWord } from "./vehicle-word.ts";
