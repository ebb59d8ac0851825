export {
  type BeamOnGround,
  type BeamState,
  beamLambda,
  infiniteUnderCouple,
  infiniteUnderLoad,
  semiInfinite,
} from "./beam-on-ground.ts";
export { type ClosedForms, closedForms, type PlaceTerms } from "./closed-forms.ts";
export { collapseLoad, collapseLoadSingleMoment, type LoadPlace } from "./collapse-load.ts";
export { collapseCheck } from "./collapse-terms.ts";
export { type CornerTheory, cornerCrackDistance, cornerDeflection, cornerStress } from "./corner.ts";
export { bradburyCoefficient, curlingStress } from "./curling.ts";
export { type Dowel, dowelAtFace, dowelStiffness, dowelSupport } from "./dowel.ts";
export { type EdgeTheory, edgeDeflection, edgeStress } from "./edge.ts";
export { dualRadius, rectangleRadius, specialRadius, squareSide } from "./equivalent-radius.ts";
export { type EdgePatch, edgeExact } from "./exact-edge.ts";
export { interiorExact, type PlateResponse } from "./exact-interior.ts";
export { type BeamLoad, type BeamSolution, finiteBeam } from "./finite-beam.ts";
export { hetenyiA, hetenyiB, hetenyiC, hetenyiD } from "./hetenyi-functions.ts";
export { type InteriorTheory, interiorDeflection, interiorStress } from "./interior.ts";
export {
  interlockShare,
  interlockSpring,
  interlockWidth,
  ratioOfSpring,
  shareOfSpring,
  shareTerm,
  springForRatio,
  springForShare,
} from "./joint-stiffness.ts";
export { kelvinDerivatives } from "./kelvin.ts";
export { lineLoadCapacity, lineLoadStress, stripLambda, thicknessFactor } from "./line-load.ts";
export { loadTransfer, restateTransfer, sidesOfJoint, type TransferDefinition } from "./load-transfer.ts";
export {
  type CollapseBound,
  overturningCollapse,
  type PatchForce,
  type ToeCouple,
  toeCouple,
} from "./overturning-collapse.ts";
export {
  type ControlPerimeter,
  type CornerShape,
  controlPerimeter,
  type EdgeDistances,
  edgeDistances,
  type Side,
} from "./punching-perimeter.ts";
export {
  crackingMoment,
  fibreMoments,
  fibreMomentsFromBeams,
  plainMoments,
  type SlabMoments,
  type SteelLayer,
  steelMoment,
  steelMoments,
} from "./section-moments.ts";
export { plateStiffness, type SlabOnGround, stiffnessRadius } from "./slab-on-ground.ts";
export {
  type PresumptiveSoil,
  presumptiveSoils,
  type SoilClass,
  type SubgradeRange,
  subgradeBySupport,
  subgradeBySymbol,
  subgradeFromCbr,
} from "./subgrade.ts";
export { subgradeOnBase } from "./subgrade-base-course.ts";
export { clayShape, subgradeFromBearing, subgradeOnClay, subgradeOnSand } from "./subgrade-size.ts";
