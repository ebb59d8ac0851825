import { type Assessment, assess } from "@floorworthy/assess";
import { type Job, type JobReading, readJob } from "@floorworthy/job";
import type { Told } from "../work/with-job.ts";
import type { CardId } from "./cards.ts";
import { drillPlan } from "./plan/drill-plan.ts";
import { installationPlan } from "./plan/installation-plan.ts";
import { pourPlan } from "./plan/pour-plan.ts";
import { torquePlan } from "./plan/torque-plan.ts";
import type { CardPlan, JobPlan } from "./question.ts";

/** The whole judgement takes a second and more; typing on a card does not change it, keeping does. */
let judged: { readonly text: string; readonly assessment: Assessment } | undefined;
const judgedOf = (text: string, job: Job): Assessment => {
  if (judged?.text !== text) judged = { text, assessment: assess(job) };
  return judged.assessment;
};

const planOf = (card: CardId, job: Job, date: string, assessment: () => Assessment): JobPlan => {
  switch (card) {
    case "drill":
      return drillPlan(job, date);
    case "pour":
      return pourPlan(job, date);
    case "installation":
      return installationPlan(job, date, assessment());
    case "torque":
      return torquePlan(job, date);
  }
};

const wordsOf = (reading: JobReading): readonly string[] =>
  reading.ok ? [] : reading.issues.slice(0, 3).map(({ message, hint }) => `${message} ${hint}`.trim());

/**
 * A card for a job, in the job's own units.
 * @param live - the job's text with what is typed on the card; where it cannot be read, the plan is of the text without it
 */
export const cardPlan = (card: CardId, live: string, text: string, date: string): Told<CardPlan> => {
  const [typed, before] = [readJob(live), readJob(text)];
  if (!typed.ok && !before.ok) return { ok: false, why: `The job has mistakes: ${wordsOf(before).join(" ")}` };
  const job = typed.ok ? typed.job : before.ok ? before.job : undefined;
  const assessment = () => (before.ok ? judgedOf(text, before.job) : judgedOf(live, job!));
  return { ok: true, value: { ...planOf(card, job!, date, assessment), faults: wordsOf(typed) } };
};

/** What the job comes to with what is typed, in one sentence; undefined where it cannot be read. */
export const cardStanding = (text: string): string | undefined => {
  const reading = readJob(text);
  return reading.ok ? judgedOf(text, reading.job).sentence : undefined;
};
