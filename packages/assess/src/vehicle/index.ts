export type { HeightLoads } from "./by-height.ts";
export { judgeVehicle, type VehicleAnswer, type VehicleWord } from "./judge-vehicle.ts";
export { isVehicleClass, plainVehicle, type VehicleClassName, vehicleClasses, vehicleOfClass } from "./presets.ts";
