import type { Assessment } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import { useEffect, useState } from "react";
import type { Answer, Units } from "./messages.ts";
import { useWork } from "./use-work.ts";

/** The last answer, and the last one that judged something: it stays in sight while a mistake is being mended. */
export interface Answers {
  readonly last: Answer | undefined;
  readonly good:
    | { readonly text: string; readonly job: Job; readonly assessment: Assessment; readonly drawing: string }
    | undefined;
  /** `settled`: what is shown belongs to what is typed */
  readonly state: "empty" | "working" | "settled" | "behind";
  readonly fault: string | undefined;
}

export const useAnswer = (text: string | undefined, units: Units | undefined): Answers => {
  const {
    state,
    value: last,
    fault,
  } = useWork("judge", text === undefined ? undefined : [text, units], {
    desk: "answer",
    pause: 100,
  });
  const [good, setGood] = useState<Answers["good"]>();
  useEffect(() => {
    if (last?.job && last.assessment)
      setGood({ text: last.text, job: last.job, assessment: last.assessment, drawing: last.drawing });
  }, [last]);
  const behind = last !== undefined && !last.job;
  return {
    last,
    good,
    fault,
    state:
      state === "waiting"
        ? "empty"
        : state === "working" || last?.text !== text
          ? "working"
          : behind || fault
            ? "behind"
            : "settled",
  };
};
