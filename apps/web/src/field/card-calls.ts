import type { Job } from "@floorworthy/job";
import { readJob } from "@floorworthy/job";
import type { Told } from "../work/with-job.ts";
import type { CardId } from "./cards.ts";
import { drillPlan } from "./plan/drill-plan.ts";
import { installationPlan } from "./plan/installation-plan.ts";
import { pourPlan } from "./plan/pour-plan.ts";
import { torquePlan } from "./plan/torque-plan.ts";
import type { CardPlan } from "./question.ts";

const plans: Readonly<Record<CardId, (job: Job, date: string) => CardPlan>> = {
  drill: drillPlan,
  pour: pourPlan,
  installation: installationPlan,
  torque: torquePlan,
};

/** A card for a job as it stands, in the job's own units. */
export const cardPlan = (card: CardId, text: string, date: string): Told<CardPlan> => {
  const reading = readJob(text);
  if (reading.ok) return { ok: true, value: plans[card](reading.job, date) };
  const said = reading.issues.slice(0, 3).map(({ path, message, hint }) => `${path}: ${message} ${hint}`.trim());
  return { ok: false, why: said.join(" ") };
};
