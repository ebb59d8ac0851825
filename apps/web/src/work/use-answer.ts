import { useEffect, useState } from "react";
import type { Judged, Look, Units } from "./messages.ts";
import { useWork } from "./use-work.ts";

/** What was found at once, and the last whole judgement: it stays in sight while a mistake is being mended. */
export interface Answers {
  readonly last: Look | undefined;
  readonly good: Judged | undefined;
  /** `settled`: what is shown belongs to what is typed */
  readonly state: "empty" | "working" | "settled" | "behind";
  readonly fault: string | undefined;
}

/** The answer in two steps: the maker's page and the plan at once, the margin and what is still open when they are there. */
export const useAnswer = (text: string | undefined, units: Units | undefined): Answers => {
  const asked = text === undefined ? undefined : ([text, units] as [string, Units | undefined]);
  const first = useWork("look", asked, { desk: "answer", pause: 60 });
  const whole = useWork("judge", asked, { desk: "answer", pause: 80 });
  const last = first.value;
  const [good, setGood] = useState<Judged>();
  useEffect(() => {
    if (whole.value) setGood(whole.value);
  }, [whole.value]);
  const fault = first.fault ?? whole.fault;
  return { last, good, fault, state: stateOf(text, last, good, whole.state, fault) };
};

const stateOf = (
  text: string | undefined,
  last: Look | undefined,
  good: Judged | undefined,
  whole: ReturnType<typeof useWork>["state"],
  fault: string | undefined,
): Answers["state"] => {
  if (text === undefined) return "empty";
  if (fault || (last?.text === text && !last.found)) return "behind";
  return whole === "working" || good?.text !== text ? "working" : "settled";
};
