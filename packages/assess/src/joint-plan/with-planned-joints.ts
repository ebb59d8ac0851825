import { type Job, type Joint, unknown } from "@floorworthy/job";
import type { JobJointPlan } from "./job-joint-plan.ts";

/** The job as it would be drawn with these joints: wishes replaced by the lines planned, filler round columns added. */
export const withPlannedJoints = (job: Job, plan: JobJointPlan): Job => {
  if (plan.basis === "as-it-is") {
    const made = new Set(plan.lines.map((line) => line.name));
    return {
      ...job,
      floor: {
        ...job.floor,
        joints: job.floor.joints.filter(
          ({ state, name, kind }) => state === "standing" || made.has(name || kind.replace("-", " ")),
        ),
      },
    };
  }
  const cut = plan.lines.map(
    ({ name, kind, from, to }): Joint => ({ name, kind, from, to, transfer: unknown, state: "proposed" }),
  );
  const filled = plan.isolation
    .filter(({ shape }) => shape === "round")
    .flatMap(({ what, outline }) =>
      outline.map(
        (from, i): Joint => ({
          name: i === 0 ? `filler round ${what}` : "",
          kind: "isolation",
          from,
          to: outline[(i + 1) % outline.length]!,
          transfer: unknown,
          state: "proposed",
        }),
      ),
    );
  return { ...job, floor: { ...job.floor, joints: [...cut, ...filled] } };
};
