import type { Assessment } from "@floorworthy/assess";
import type { Answers } from "../work/use-answer.ts";
import { nextOf } from "./next-fact.ts";
import { outcomeWords, pageWords } from "./outcome-words.ts";

const stateWords: Readonly<Record<Answers["state"], string>> = {
  empty: "",
  working: "Working it out …",
  settled: "",
  behind: "Before the last change. Mend what is marked, and this follows.",
};

/** What to do, why, and what to find out next. Always in sight, and always as high, so that nothing under it jumps. */
export const OutcomeStrip = ({ answers }: { answers: Answers }) => {
  const { good, last, state } = answers;
  if (good) return <Said assessment={good.assessment} state={state} />;
  const found = last?.found;
  const stop = found?.stops[0];
  return (
    <section className="outcome" aria-label="Outcome" data-state={state}>
      <p className="outcome-word">{stop ? outcomeWords[stop.outcome] : state === "behind" ? "Not read" : "…"}</p>
      <div className="outcome-said" aria-live="polite">
        {found && (
          <h2 className="outcome-sentence">
            {stop ? stop.reason : `The maker's page: ${pageWords[found.page.verdict]}. The margin follows.`}
          </h2>
        )}
        {last && !found && (
          <h2 className="outcome-sentence">
            This job cannot be read yet:{" "}
            {last.mistakes.length === 1 ? "one mistake" : `${last.mistakes.length} mistakes`} to mend.
          </h2>
        )}
      </div>
      <p className="outcome-state" role="status">
        {stateWords[state]}
      </p>
    </section>
  );
};

const Said = ({ assessment, state }: { assessment: Assessment; state: Answers["state"] }) => {
  const { outcome, sentence, reasons } = assessment;
  const [lead, ...rest] = sentence.split(/(?<=[.!?]) /);
  const reason = reasons[0];
  const next = nextOf(assessment);
  return (
    <section className="outcome" aria-label="Outcome" data-state={state}>
      <p className="outcome-word">{outcomeWords[outcome]}</p>
      <div className="outcome-said" aria-live="polite">
        <h2 className="outcome-sentence">{lead}</h2>
        {(rest.length > 0 || reason) && (
          <p className="outcome-rest">{rest.length > 0 ? rest.join(" ") : sentence.includes(reason!) ? "" : reason}</p>
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
