import { type Job, readJob } from "@floorworthy/job";
import type { Told } from "../work/with-job.ts";
import type { CardId } from "./cards.ts";
import { drillPlan } from "./plan/drill-plan.ts";
import { installationPlan } from "./plan/installation-plan.ts";
import { pourPlan } from "./plan/pour-plan.ts";
import { torquePlan } from "./plan/torque-plan.ts";
import type { CardPlan, JobPlan } from "./question.ts";

const plans: Readonly<Record<CardId, (job: Job, date: string) => JobPlan>> = {
  drill: drillPlan,
  pour: pourPlan,
  installation: installationPlan,
  torque: torquePlan,
};

const wordsOf = (reading: ReturnType<typeof readJob>): readonly string[] =>
  reading.ok ? [] : reading.issues.slice(0, 3).map(({ message, hint }) => `${message} ${hint}`.trim());

/**
 * A card for a job, in the job's own units.
 * @param live - the job's text with what is typed on the card; where it cannot be read, the plan is of the text without it
 */
export const cardPlan = (card: CardId, live: string, text: string, date: string): Told<CardPlan> => {
  const [typed, before] = [readJob(live), readJob(text)];
  const reading = typed.ok ? typed : before;
  if (!reading.ok) return { ok: false, why: `The job has mistakes: ${wordsOf(before).join(" ")}` };
  return { ok: true, value: { ...plans[card](reading.job, date), faults: wordsOf(typed) } };
};
