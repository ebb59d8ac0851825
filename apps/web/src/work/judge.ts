import { assess } from "@floorworthy/assess";
import { readJob } from "@floorworthy/job";
import { planDrawing } from "@floorworthy/papers/plan";
import { drawingToSvg } from "@floorworthy/papers/svg";
import type { Answer, Units } from "./messages.ts";
import { mistakesOf } from "./mistakes-of.ts";

/** The plan is drawn for a small sheet, so that its letters can be read on a screen; mm. */
const paper = { width: 110, height: 125 };

/** The whole path of a job: read it, judge it, draw it. */
export const judge = (text: string, units: Units | undefined): Answer => {
  const reading = readJob(text);
  if (!reading.ok)
    return {
      text,
      mistakes: mistakesOf(reading.issues),
      warnings: [],
      job: undefined,
      assessment: undefined,
      drawing: "",
    };
  const job = units ? { ...reading.job, units } : reading.job;
  const assessment = assess(job);
  return {
    text,
    mistakes: [],
    warnings: mistakesOf(reading.warnings),
    job,
    assessment,
    drawing: drawingToSvg(planDrawing(job, assessment, paper)),
  };
};
