import { useEffect, useRef, useState } from "react";
import { go } from "../route.ts";
import { CardEnd } from "./card-end.tsx";
import { Figures } from "./card-figures.tsx";
import { Standing } from "./card-standing.tsx";
import { CardStart } from "./card-start.tsx";
import { CardStep } from "./card-step.tsx";
import type { Card } from "./cards.ts";
import { type CardDraft, isBegun, stepState } from "./draft.ts";
import { keepStep } from "./keep-step.ts";
import { ProgressLine } from "./progress-line.tsx";
import type { Step } from "./question.ts";
import { faultsAt, stopOfCard } from "./rules.ts";
import { StopPanel } from "./stop-panel.tsx";
import type { CardInHand as Hand } from "./use-card.ts";

/** The step in hand between what stands above it and the way back and on. */
export const CardInHand = (props: {
  readonly jobId: string;
  readonly card: Card;
  readonly hand: Hand;
  /** the step in hand; "end" for the list, anything else for the beginning */
  readonly place: string;
  readonly at: (step: string) => string;
}) => {
  const { jobId, card, hand, at } = props;
  const { steps, draft, plan, change } = hand;
  const index = steps.findIndex(({ id }) => id.toLowerCase() === props.place.toLowerCase());
  const step = steps[index];
  const place = step ? step.id : props.place === "end" ? "end" : "start";
  const [tried, setTried] = useState("");
  const head = useRef<HTMLHeadingElement>(null);
  const begun = useRef(place);
  useEffect(() => {
    if (begun.current === place) return;
    begun.current = place;
    globalThis.scrollTo({ top: 0 });
    head.current?.focus();
    if (draft && draft.at !== place) change((before) => ({ ...before, at: place }));
  }, [place, draft, change]);

  const ended = stopOfCard(draft);
  const stop =
    ended && ended.step !== place
      ? [ended.words]
      : plan?.stop.length && !(ended && card.id === "installation")
        ? plan.stop
        : [];
  const closed =
    step !== undefined && (plan?.open !== "all" || ended !== undefined) && stepState(draft, step) === "open";
  const onward = place === "start" ? steps[0] : steps[index + 1];
  const before = (place === "end" ? steps.at(-1)?.id : steps[index - 1]?.id) ?? "start";
  const next = place === "end" ? undefined : ended ? "end" : (onward?.id ?? "end");
  const putKept = ({ kept }: CardDraft) => change((before) => ({ ...before, kept }));
  const keepAndGo = () => {
    if (step && Object.keys(faultsAt(draft, card.id, step)).length > 0) {
      setTried(step.id);
      requestAnimationFrame(() =>
        document.querySelector<HTMLElement>("[data-wrong] input, [data-wrong] button")?.focus(),
      );
      return;
    }
    setTried("");
    if (step && draft && card.keeps === "each" && stepState(draft, step) === "typed")
      putKept(keepStep(card, draft, step));
    if (next) go(at(next).slice(1));
  };
  return (
    <>
      {steps.length > 0 && <ProgressLine steps={steps} at={index} draft={draft} listAddress={at("end")} />}
      <StopPanel id="card-stop" lines={stop} />
      {draft && isBegun(draft) && draft.date !== plan?.date && (
        <p className="quiet">This card was begun on {draft.date}.</p>
      )}
      {plan?.faults.map((fault) => (
        <p key={fault} role="alert">
          {fault}
        </p>
      ))}
      <h2 ref={head} tabIndex={-1} className={plan?.open === "none" ? "unseen" : "card-name"}>
        {step ? step.name : place === "end" ? "The list" : card.says}
      </h2>
      {step?.where.map((line) => (
        <p key={line} className="card-where">
          {line}
        </p>
      ))}
      {step && !closed && step.figures.length > 0 && <Figures figures={step.figures} />}
      {step && !closed && (
        <CardStep jobId={jobId} card={card} hand={hand} step={step} told={tried === step.id ? "all" : "typed-only"} />
      )}
      {closed && <p className="card-sentence">Nothing new is begun here until this is settled.</p>}
      {place === "end" && <CardEnd card={card} hand={hand} at={at} />}
      {place === "start" && <CardStart card={card} hand={hand} />}
      {card.id === "drill" && stop.length === 0 && !ended && <Standing live={hand.live} />}
      <nav className="card-bar" aria-label="Back and on">
        <a href={place === "start" ? at("").split("/cards/")[0] : at(before)}>Back</a>
        {steps.length > 0 && next && (
          <button type="button" className="decide" onClick={keepAndGo}>
            {onwardWords(card, hand, step, ended ? undefined : onward, place)}
          </button>
        )}
      </nav>
    </>
  );
};

const onwardWords = (
  card: Card,
  { draft }: Hand,
  step: Step | undefined,
  onward: Step | undefined,
  place: string,
): string => {
  const to = onward?.name ?? "the list";
  if (place === "start" || !step) return `Begin: ${to}`;
  const state = stepState(draft, step);
  if (state === "open") return onward ? `Skip, on to ${to}` : `On to ${to}`;
  return state === "typed" && card.keeps === "each" ? `Keep, on to ${to}` : `On to ${to}`;
};
