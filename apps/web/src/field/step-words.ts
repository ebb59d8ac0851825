import type { Answers } from "./draft.ts";
import type { Step } from "./question.ts";
import { readAnswer } from "./read-typed.ts";

/** The answers of a step on one line, as they were understood. */
export const stepWords = (step: Step, answers: Answers): string =>
  step.questions
    .flatMap((question) => {
      const typed = readAnswer(answers[question.key] ?? "", question);
      if (typed.state === "open") return [];
      if (typed.state === "mistake") return ["?"];
      if (question.kind !== "choice") return [typed.written];
      return [question.choices.find(({ value }) => value === typed.written)?.words ?? typed.written];
    })
    .join(", ");
