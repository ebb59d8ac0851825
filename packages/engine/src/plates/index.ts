export type {
  Edge,
  Equilibrium,
  Floor,
  FloorCase,
  FloorLoad,
  FloorOptions,
  FloorResult,
  Governing,
  Joint,
  Moments,
  Peak,
  Side,
  StressPeak,
  Transfer,
  Zone,
} from "./floor.ts";
export { flexuralRigidity, relativeStiffness, unboundedOutline } from "./relative-stiffness.ts";
export { shearDeflection } from "./shear-deflection.ts";
export { solveFloor } from "./solve-floor.ts";
export { thickPlateFactor } from "./thick-plate-factor.ts";
