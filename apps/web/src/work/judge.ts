import { assess, firstLook } from "@floorworthy/assess";
import { readJob } from "@floorworthy/job";
import { planDrawing } from "@floorworthy/papers/plan";
import { padSection } from "@floorworthy/papers/section";
import { drawingToSvg } from "@floorworthy/papers/svg";
import type { Judged, Look, Units } from "./messages.ts";
import { mistakesOf } from "./mistakes-of.ts";

/** Small sheets, so that their letters can be read on a screen; mm. */
const planPaper = { width: 110, height: 125 };
const sectionPaper = { width: 120, height: 52 };

/** What is known at once: mistakes, the maker's page, the plan. */
export const look = (text: string, units: Units | undefined): Look => {
  const reading = readJob(text);
  if (!reading.ok) return { text, mistakes: mistakesOf(reading.issues), warnings: [], found: undefined };
  const job = units ? { ...reading.job, units } : reading.job;
  return { text, mistakes: [], warnings: mistakesOf(reading.warnings), found: { job, ...firstLook(job) } };
};

/** The whole path of a job: read it, judge it, draw it. */
export const judge = (text: string, units: Units | undefined): Judged | undefined => {
  const reading = readJob(text);
  if (!reading.ok) return undefined;
  const job = units ? { ...reading.job, units } : reading.job;
  const assessment = assess(job);
  return {
    text,
    job,
    assessment,
    drawing: drawingToSvg(planDrawing(job, assessment, planPaper)),
    section: drawingToSvg(padSection(job, assessment, sectionPaper)),
  };
};
