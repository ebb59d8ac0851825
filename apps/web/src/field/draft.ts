import type { CardId } from "./cards.ts";
import type { Question, Step } from "./question.ts";
import { readAnswer } from "./read-typed.ts";

export type Answers = { readonly [key: string]: string };

export interface Snapshot {
  readonly id: string;
  /** small picture as a data address */
  readonly thumb: string;
}

/** A card in hand, as it is kept on this device: closing the page loses nothing. */
export interface CardDraft {
  /** `JOB/CARD` */
  readonly id: string;
  readonly jobId: string;
  readonly card: CardId;
  /** YYYY-MM-DD it was begun */
  readonly date: string;
  /** the steps as they were when the card was begun: readings that come in must not number them anew */
  readonly steps: readonly Step[];
  /** the step last in hand */
  readonly at: string;
  readonly answers: { readonly [step: string]: Answers };
  /** what was handed over already of each step (of a round: under ""), as JSON of the answers */
  readonly kept: { readonly [step: string]: string };
  readonly photographs: { readonly [step: string]: readonly Snapshot[] };
}

export const draftId = (jobId: string, card: CardId): string => `${jobId}/${card}`;

export const emptyDraft = (jobId: string, card: CardId, date: string, steps: readonly Step[]): CardDraft => ({
  id: draftId(jobId, card),
  jobId,
  card,
  date,
  steps,
  at: "",
  answers: {},
  kept: {},
  photographs: {},
});

export const answersAt = (draft: CardDraft | undefined, step: string): Answers => draft?.answers[step] ?? {};

const withAnswer = (draft: CardDraft, step: string, key: string, value: string): CardDraft => ({
  ...draft,
  answers: { ...draft.answers, [step]: { ...draft.answers[step], [key]: value } },
});

/** An answer, with what follows from it: the mark flush and the bit still in concrete is as deep as the mark. */
export const answered = (draft: CardDraft, step: Step, key: string, value: string): CardDraft => {
  const next = withAnswer(draft, step.id, key, value);
  const depth = step.questions.find((question) => question.key === "thickness");
  const mark = depth?.kind === "quantity" ? depth.picks?.[0]?.value : undefined;
  return key === "end" && value === "still-concrete" && mark && !answersAt(next, step.id).thickness
    ? withAnswer(next, step.id, "thickness", mark)
    : next;
};

/** Answers as they go into the file. What was answered once and then taken back is unknown. */
export const readAnswers = (step: Step, answers: Answers): Answers =>
  Object.fromEntries(
    step.questions.flatMap((question) => {
      const typed = readAnswer(answers[question.key] ?? "", question);
      return typed.state === "read" ? [[question.key, typed.written]] : [];
    }),
  );

/** One message for each mistake, by the key of its question. */
export const mistakesOf = (step: Step, answers: Answers): Answers =>
  Object.fromEntries(
    step.questions.flatMap((question: Question) => {
      const typed = readAnswer(answers[question.key] ?? "", question);
      return typed.state === "mistake" ? [[question.key, typed.words]] : [];
    }),
  );

export type StepState = "open" | "typed" | "kept";

/** How a step stands: nothing on it, typed but not handed over, handed over as it stands. */
export const stepState = (draft: CardDraft | undefined, step: Step): StepState => {
  const answers = answersAt(draft, step.id);
  const said = Object.values(answers).some((value) => value.trim() !== "");
  if (step.is === "looks") return said ? "kept" : "open";
  const kept = draft?.kept[step.id];
  if (kept !== undefined && kept === JSON.stringify(readAnswers(step, answers))) return "kept";
  return said || kept !== undefined ? "typed" : "open";
};

/** Something was said, handed over or photographed on it. */
export const isBegun = (draft: CardDraft): boolean =>
  Object.keys(draft.kept).length > 0 ||
  Object.values(draft.photographs).some((taken) => taken.length > 0) ||
  draft.steps.some((step) => stepState(draft, step) !== "open");

/** Nothing of it waits to be handed over. */
export const isDone = (draft: CardDraft): boolean =>
  Object.keys(draft.kept).length > 0 && draft.steps.every((step) => stepState(draft, step) !== "typed");
