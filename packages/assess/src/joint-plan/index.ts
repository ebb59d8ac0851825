export type { Isolation, JobJointPlan, JointWatch, JointWishes, NotMade, PlannedLine } from "./job-joint-plan.ts";
export { planJobJoints } from "./plan-job-joints.ts";
export { tape } from "./tape.ts";
export { withPlannedJoints } from "./with-planned-joints.ts";
