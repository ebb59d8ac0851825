import { readQuantity } from "@floorworthy/engine/quantities";
import type { CardId } from "./cards.ts";
import { type Answers, answersAt, type CardDraft, mistakesOf, readAnswers } from "./draft.ts";
import type { Step } from "./question.ts";

/** Answers that mean nothing without another; one message at the missing one. Nothing said is no mistake. */
const missing = (card: CardId, step: Step, answers: Answers): Answers => {
  const said = (key: string) => (answers[key] ?? "").trim() !== "";
  const any = Object.keys(answers).some(said);
  if (!any) return {};
  if (card === "drill" && said("thickness") && !said("end"))
    return { end: "Say how it ended: without it the depth tells nothing." };
  if (step.id === "thermometer")
    return {
      ...(!said("low") && { low: "Write the lowest too; one alone tells nothing." }),
      ...(!said("high") && { high: "Write the highest too; one alone tells nothing." }),
    };
  if (step.id === "cover-on" || step.id === "cover-off") {
    const day = step.id === "cover-on" ? "fromDay" : "toDay";
    return { ...(!said("what") && { what: "Say what it is." }), ...(!said(day) && { [day]: "Say which day." }) };
  }
  return {};
};

/** Everything in the way of keeping a step, by the key of its question. */
export const faultsAt = (draft: CardDraft | undefined, card: CardId, step: Step): Answers => {
  const answers = answersAt(draft, step.id);
  return { ...missing(card, step, answers), ...mistakesOf(step, answers) };
};

/** What ends the drilling at once, and the question that told it. */
export interface SpotStop {
  readonly key: string;
  readonly words: string;
}

/** Common practice of the drill test and of setting anchors, no source. */
export const stopOnTheSpot = (card: CardId, step: Step, answers: Answers): SpotStop | undefined => {
  if (card === "installation") return hitStop(step, answers);
  if (card !== "drill") return undefined;
  const words = drillStop(answers);
  return words === undefined
    ? undefined
    : { key: words.startsWith("Stop. There is a hollow") ? "under" : "out", words };
};

/** A cut bar is settled once the hole has its depth; nothing else is. */
const hitStop = (step: Step, answers: Answers): SpotStop | undefined => {
  const { met = "" } = answers;
  if (met === "" || met === "nothing") return undefined;
  const depth = readAnswers(step, answers).depth;
  const read = depth === undefined ? undefined : readQuantity(depth, "length");
  const whole = read?.ok && step.depthAsked !== undefined && read.value >= step.depthAsked - 0.5;
  return met === "bar" && whole ? undefined : { key: "met", words: `Stop drilling at ${step.name}. No further hole.` };
};

const drillStop = ({ out = "", under = "" }: Answers): string | undefined => {
  if (out.includes("steel"))
    return "Stop. The bit met steel: a bar, or a tendon under load. No further hole until somebody has shown what it is.";
  if (out.includes("plastic"))
    return "Stop. Plastic or wire came out: a tube, a cable or a tendon's sheath. No further hole until it is known.";
  if (out.includes("water"))
    return "Stop. Water or a smell came out: a pipe may be open. Shut it off, keep flames away, find out what it is.";
  if (under.includes("void"))
    return "Stop. There is a hollow under the concrete: write down the depth. Nothing is lifted here.";
  return undefined;
};

/** Looks that are not clear yet, by what is looked for. */
export const openLooks = (draft: CardDraft | undefined, steps: readonly Step[]): readonly string[] =>
  steps
    .filter((step) => step.is === "looks")
    .flatMap((step) => step.questions.filter(({ key }) => answersAt(draft, step.id)[key] !== "clear"))
    .map(({ ask }) => ask);

/** The first step of a card where drilling had to end, and why. */
export const stopOfCard = (
  draft: CardDraft | undefined,
): { readonly step: string; readonly words: string } | undefined => {
  for (const step of draft?.steps ?? []) {
    const stop = stopOnTheSpot(draft!.card, step, answersAt(draft, step.id));
    if (stop) return { step: step.id, words: stop.words };
  }
  return undefined;
};
