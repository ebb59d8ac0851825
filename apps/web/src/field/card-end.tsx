import type { Card } from "./cards.ts";
import { answersAt, type CardDraft, isBegun, isDone, stepState } from "./draft.ts";
import { entryOfRound } from "./entries.ts";
import { keepRound, keepStep } from "./keep-step.ts";
import { faultsAt } from "./rules.ts";
import { stepWords } from "./step-words.ts";
import type { CardInHand } from "./use-card.ts";

const marks = { open: "○", typed: "◐", kept: "●" } as const;
const said = { open: "skipped", typed: "typed, not kept yet", kept: "kept" } as const;

/** The whole list: every step with what was said, and what is left to do. */
export const CardEnd = ({ card, hand, at }: { card: Card; hand: CardInHand; at: (step: string) => string }) => {
  const { draft, steps, change, clear } = hand;
  const putKept = ({ kept }: CardDraft) => change((before) => ({ ...before, kept }));
  const typed = steps.filter((step) => stepState(draft, step) === "typed");
  const faulty = typed.filter((step) => Object.keys(faultsAt(draft, card.id, step)).length > 0);
  const nuts = steps.slice(1).filter((step) => stepState(draft, step) !== "open").length;
  const round = card.keeps === "round" && draft ? entryOfRound(draft) : undefined;
  return (
    <>
      <ol className="card-list">
        {steps.map((step) => {
          const state = stepState(draft, step);
          return (
            <li key={step.id}>
              <a href={at(step.id)}>
                <span aria-hidden="true">{marks[state]}</span> <b>{step.name}</b>{" "}
                <span>{stepWords(step, answersAt(draft, step.id)) || "nothing said"}</span>
                <span className="unseen">, {said[state]}</span>
                {faulty.includes(step) && <em> Something is wrong here.</em>}
              </a>
            </li>
          );
        })}
      </ol>
      {card.keeps === "round" && typed.length > 0 && faulty.length === 0 && round && (
        <button type="button" className="card-act decide" onClick={() => draft && putKept(keepRound(card, draft))}>
          {nuts < steps.length - 1 ? `Finish with ${nuts} of ${steps.length - 1} nuts` : "Finish the round"}
        </button>
      )}
      {card.keeps === "each" && typed.length > 0 && faulty.length === 0 && (
        <button
          type="button"
          className="card-act decide"
          onClick={() => draft && putKept(typed.reduce((before, step) => keepStep(card, before, step), draft))}
        >
          Keep what is typed
        </button>
      )}
      {draft && isBegun(draft) && !isDone(draft) && (
        <details className="card-more">
          <summary>Begin this card anew</summary>
          <p>What is typed here and not kept yet is given up. What was kept stays in the job.</p>
          <button type="button" className="card-act" onClick={clear}>
            Give up what is typed
          </button>
        </details>
      )}
      {draft && isDone(draft) && (
        <>
          <p className="card-sentence">
            {card.keeps === "round" ? "The round is kept." : "All that was said is kept."} It goes on here until the day
            is over.
          </p>
          <button type="button" className="card-act" onClick={clear}>
            Begin this card anew
          </button>
        </>
      )}
    </>
  );
};
