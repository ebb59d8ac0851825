export { alignJoints, planBurden } from "./align-joints.ts";
export { type Candidates, candidates } from "./candidates.ts";
export type {
  AnchorClear,
  BuildingColumn,
  IsolationJoint,
  JointLine,
  JointPlan,
  JointRule,
  JointTask,
  KeepOut,
  LineAxis,
  Panel,
  PlanWatch,
  RefusedLine,
  UnmetRule,
  WantedLine,
} from "./joint-plan.ts";
export {
  ASPECT_LIMIT,
  jointSpacing,
  type SawKind,
  SPACING_CAP,
  type SpacingMultiple,
  sawDepth,
} from "./joint-rules.ts";
export { type LineBlock, lineBlocks } from "./line-blocks.ts";
export { reentrantCorners } from "./line-reasons.ts";
export { planJoints } from "./plan-joints.ts";
