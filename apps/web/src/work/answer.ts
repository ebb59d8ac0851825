import { assess } from "@floorworthy/assess";
import { readJob, setFact } from "@floorworthy/job";
import { planDrawing } from "@floorworthy/papers/plan";
import { drawingToSvg } from "@floorworthy/papers/svg";
import { factsOf } from "./facts-of.ts";
import type { Answer, Question } from "./messages.ts";
import { mistakesOf } from "./mistakes-of.ts";

/** The plan is drawn for a small sheet, so that its letters can be read on a screen; mm. */
const paper = { width: 110, height: 125 };

/** The whole path of a question: write the facts into the file, read it, judge it. Faults of ours end here, in words. */
export const answer = ({ number, text, edits, units, sheets }: Question): Omit<Answer, "milliseconds"> => {
  const nothing = {
    number,
    text,
    facts: [],
    mistakes: [],
    warnings: [],
    job: undefined,
    assessment: undefined,
    drawing: "",
  };
  try {
    const edited = edits.reduce((file, { path, written }) => setFact(file, path, written.trim() || "unknown"), text);
    const reading = readJob(edited, { load: (name) => sheets[name] });
    if (!reading.ok) {
      const mistakes = mistakesOf(reading.issues);
      return { ...nothing, text: edited, facts: factsOf(edited, mistakes), mistakes, fault: undefined };
    }
    const warnings = mistakesOf(reading.warnings);
    const job = units ? { ...reading.job, units } : reading.job;
    const facts = factsOf(edited, []);
    const assessment = assess(job);
    const drawing = drawingToSvg(planDrawing(job, assessment, paper));
    return { ...nothing, text: edited, facts, warnings, job, assessment, drawing, fault: undefined };
  } catch (error) {
    return { ...nothing, fault: `The calculation broke, and that is a fault of this program: ${String(error)}` };
  }
};
