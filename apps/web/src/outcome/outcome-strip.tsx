import type { Assessment } from "@floorworthy/assess";
import type { Answers } from "../work/use-answer.ts";
import { outcomeWords } from "./outcome-words.ts";

const stateWords: Readonly<Record<Answers["state"], string>> = {
  empty: "",
  working: "Working it out …",
  settled: "",
  behind: "Before the last change. Mend what is marked, and this follows.",
};

/** What to do, why, and what to find out next. Always in sight. */
export const OutcomeStrip = ({ assessment, state }: { assessment: Assessment; state: Answers["state"] }) => {
  const { outcome, sentence, reasons, missing } = assessment;
  const [lead, ...rest] = sentence.split(/(?<=[.!?]) /);
  const reason = reasons[0];
  const next = missing.find(({ flips }) => flips === "flips") ?? missing[0];
  return (
    <section className="outcome" aria-label="Outcome" data-state={state}>
      <p className="outcome-word">{outcomeWords[outcome]}</p>
      <div className="outcome-said" aria-live="polite">
        <h2 className="outcome-sentence">{lead}</h2>
        {rest.length > 0 && <p>{rest.join(" ")}</p>}
        {reason && !sentence.includes(reason) && (
          <p className="outcome-reason">
            <b>Why</b> {reason}
          </p>
        )}
        {next && (
          <p className="outcome-next">
            <b>Find out next</b> {next.what}: {next.how} <span className="cost">{next.cost}</span>
          </p>
        )}
      </div>
      <p className="outcome-state" role="status">
        {stateWords[state]}
      </p>
    </section>
  );
};
