import { useId, useState } from "react";
import { eighths, fractionOf, withFraction } from "./fractions.ts";
import type { Pick, Question } from "./question.ts";
import { readAnswer } from "./read-typed.ts";

interface AskProps {
  readonly question: Question;
  readonly value: string;
  readonly fault: string | undefined;
  readonly onChange: (value: string) => void;
}

/** One question of a card, large enough for a glove. */
export const AskRow = (props: AskProps) =>
  props.question.kind === "choice" ? <ChoiceAsk {...props} /> : <TypedAsk {...props} />;

const Last = ({ question: { last, hint } }: { question: Question }) => (
  <>
    {hint && <span className="ask-last">{hint}</span>}
    {last && <span className="ask-last">last: {last}</span>}
  </>
);

const Picks = (props: {
  readonly picks: readonly Pick[];
  readonly value: string;
  readonly onPick: (value: string) => void;
}) => (
  <div className="picks">
    {props.picks.map(({ value, words }) => (
      <button
        key={value}
        type="button"
        aria-pressed={props.value === value}
        onClick={() => props.onPick(props.value === value ? "" : value)}
      >
        {words}
      </button>
    ))}
  </div>
);

const ChoiceAsk = ({ question, value, fault, onChange }: AskProps) => {
  const id = useId();
  if (question.kind !== "choice") return null;
  return (
    <fieldset className="ask" data-wrong={fault !== undefined || undefined} aria-describedby={`${id}-said`}>
      <legend>
        {question.ask} <Last question={question} />
      </legend>
      <Picks picks={question.choices} value={value} onPick={onChange} />
      <p id={`${id}-said`} className="ask-said">
        {fault}
      </p>
    </fieldset>
  );
};

const bare = /^[\d\s.,/+-]*$/;

const TypedAsk = ({ question, value, fault, onChange }: AskProps) => {
  const id = useId();
  const [keys, setKeys] = useState<"figures" | "letters">("figures");
  if (question.kind === "choice") return null;
  const typed = readAnswer(value, question);
  const measured = question.kind === "quantity" ? question : undefined;
  const said = fault ?? (typed.state === "read" ? typed.says : "");
  const unit = measured && bare.test(value) ? (measured.unit === "deg" ? "°" : measured.unit) : "";
  const type = question.kind === "words" ? (question.type ?? "text") : "text";
  return (
    <div className="ask" data-wrong={fault !== undefined || undefined} data-kind={question.kind}>
      <div className="ask-head">
        <label htmlFor={id}>{question.ask}</label>
        <Last question={question} />
      </div>
      <div className="ask-hand">
        <input
          id={id}
          type={type}
          value={value}
          inputMode={measured && keys === "figures" ? "decimal" : "text"}
          autoComplete="off"
          enterKeyHint="next"
          aria-invalid={fault !== undefined}
          aria-describedby={`${id}-unit ${id}-said`}
          onChange={({ target }) => onChange(target.value)}
        />
        <span id={`${id}-unit`} className="ask-unit">
          {unit}
        </span>
        {measured && (
          <button
            type="button"
            className="ask-keys"
            aria-label={`letters on the keyboard for ${question.ask}`}
            aria-pressed={keys === "letters"}
            onClick={() => {
              setKeys(keys === "figures" ? "letters" : "figures");
              document.getElementById(id)?.focus();
            }}
          >
            abc
          </button>
        )}
      </div>
      {measured?.fractions && (
        <fieldset className="eighths">
          <legend className="unseen">eighths of an inch for {question.ask}</legend>
          {eighths.map((fraction) => (
            <button
              key={fraction}
              type="button"
              aria-pressed={fractionOf(value) === fraction}
              onClick={() => onChange(withFraction(value, fraction))}
            >
              {fraction}
            </button>
          ))}
        </fieldset>
      )}
      {question.picks && <Picks picks={question.picks} value={value} onPick={onChange} />}
      <p id={`${id}-said`} className="ask-said" aria-live="polite">
        {said}
      </p>
    </div>
  );
};
