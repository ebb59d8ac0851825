import type { Card } from "./cards.ts";
import { answersAt, type CardDraft, readAnswers } from "./draft.ts";
import { type EntryBody, entryOfRound, entryOfStep } from "./entries.ts";
import { madeId } from "./made-id.ts";
import { giveUp, hand, waitingNow } from "./outbox.ts";
import type { Step } from "./question.ts";
import { stepWords } from "./step-words.ts";

const handOver = (draft: CardDraft, place: string, words: string, body: EntryBody): void => {
  // what was refused at this place is what is corrected now
  for (const item of waitingNow())
    if (item.jobId === draft.jobId && item.place === place && item.kind === "entry" && item.fate.state === "refused")
      giveUp(item);
  const made = new Date().toISOString();
  hand({ kind: "entry", id: madeId(), jobId: draft.jobId, made, words, place, body, fate: { state: "waits" } });
};

const asKept = (draft: CardDraft, steps: readonly Step[]): CardDraft => ({
  ...draft,
  kept: {
    ...draft.kept,
    ...Object.fromEntries(steps.map((step) => [step.id, JSON.stringify(readAnswers(step, answersAt(draft, step.id)))])),
  },
});

/** Hands one step over, if anything is said on it. */
export const keepStep = (card: Card, draft: CardDraft, step: Step): CardDraft => {
  const body = entryOfStep(card.id, draft, step);
  if (!body) return draft;
  handOver(draft, `${card.id}/${step.id}`, `${step.name}: ${stepWords(step, answersAt(draft, step.id))}`, body);
  return asKept(draft, [step]);
};

/** Hands a round over, whole or in part. */
export const keepRound = (card: Card, draft: CardDraft): CardDraft => {
  const body = entryOfRound(draft);
  if (!body) return draft;
  const read = draft.steps.filter((step) => Object.keys(readAnswers(step, answersAt(draft, step.id))).length > 0);
  const nuts = read.filter(({ id }) => id !== draft.steps[0]?.id);
  handOver(draft, `${card.id}/end`, `Round of ${draft.date}: ${nuts.map(({ name }) => name).join(", ")}`, body);
  return asKept(draft, read);
};
