export { coldJointCheck } from "./cold-joint.ts";
export {
  dowelBearingAllowed,
  dowelBearingCheck,
  dowelFitsSlab,
  dowelShares,
  dowelShearCheck,
} from "./dowels.ts";
export { type GroundPressure, groundPressure } from "./ground-pressure.ts";
export { inscribedRects } from "./inscribed-rects.ts";
export { keyHold } from "./key-hold.ts";
export type { OffsetCorner, Pad, PadPlan, PadSides } from "./pad.ts";
export { type OutlineLevel, padOutlines } from "./pad-outline.ts";
export { type PadRects, padRects } from "./pad-rects.ts";
export { type PadAction, type PadResultant, padResultant, type SeparatePad } from "./pad-resultant.ts";
export { type PadSection, padSectionChecks, sectionStrength } from "./pad-section.ts";
export { growthAtSlab, type PadVolume, padVolume } from "./pad-volume.ts";
export { type PlanArea, planArea } from "./plan-area.ts";
export { type SectionDemand, sectionDemand } from "./section-demand.ts";
export { type PadGround, separatePadChecks } from "./separate-pad.ts";
export { type Layer, solidVolume } from "./solid-volume.ts";
export { type Strip, type StripBending, type StripLoad, stripBending } from "./strip-bending.ts";
export { type ThinSlabEdge, thinSlabEdge } from "./thin-slab-edge.ts";
