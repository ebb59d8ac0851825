export type { BasePlate, ContactResult, PlateAnchor, PlateMovement } from "./base-plate.ts";
export { type BaseRotation, baseRotation } from "./base-rotation.ts";
export {
  bearingPressureLimit,
  type ConcentricInput,
  type ConcentricPlate,
  concentricPlate,
} from "./concentric-plate.ts";
export { positivePieces } from "./contact-zone.ts";
export { type EffectiveArea, effectiveArea } from "./effective-area.ts";
export { anchorStiffness, beddingModulus, type Estimate } from "./estimates.ts";
export { bearingThickness, type SteelFormat, tensionThickness } from "./plate-thickness.ts";
export { rowTension } from "./row-tension.ts";
export { settlementAt, solveContact } from "./solve-contact.ts";
export { type UniformBlock, type UniformBlockInput, uniformBlock } from "./uniform-block.ts";
