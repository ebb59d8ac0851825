import type { Assessment } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import { useEffect, useRef, useState } from "react";
import { type Calculator, startCalculator } from "./calculator.ts";
import type { Answer, Edit, Units } from "./messages.ts";

/** The file in hand, with what was typed over it. */
export interface OpenFile {
  readonly id: string;
  readonly text: string;
  readonly edits: readonly Edit[];
}

/** The last answer, and the last one that judged something: it stays in sight while a mistake is being mended. */
export interface Answers {
  readonly last: Answer | undefined;
  readonly good: { readonly job: Job; readonly assessment: Assessment; readonly drawing: string } | undefined;
  /** `settled`: what is shown belongs to what is typed */
  readonly state: "empty" | "working" | "settled" | "behind";
}

const pause = 120;

export const useAnswer = (
  file: OpenFile | undefined,
  units: Units | undefined,
  sheets: Readonly<Record<string, string>>,
): Answers => {
  const calculator = useRef<Calculator>(undefined);
  const [answers, setAnswers] = useState<Answers>({ last: undefined, good: undefined, state: "empty" });

  useEffect(() => {
    calculator.current = startCalculator((last) =>
      setAnswers(({ good }) =>
        last.job && last.assessment
          ? { last, good: { job: last.job, assessment: last.assessment, drawing: last.drawing }, state: "settled" }
          : { last, good, state: "behind" },
      ),
    );
    return () => calculator.current?.stop();
  }, []);

  const id = file?.id;
  // biome-ignore lint/correctness/useExhaustiveDependencies: another job's answer must not stay in sight
  useEffect(() => setAnswers({ last: undefined, good: undefined, state: "empty" }), [id]);

  useEffect(() => {
    if (!file) return;
    setAnswers((before) => ({ ...before, state: "working" }));
    const timer = setTimeout(
      () => calculator.current?.ask({ text: file.text, edits: file.edits, units, sheets }),
      pause,
    );
    return () => clearTimeout(timer);
  }, [file, units, sheets]);

  return answers;
};
