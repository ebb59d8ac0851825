import type { CardId } from "./cards.ts";
import { type Answers, answersAt, type CardDraft, mistakesOf } from "./draft.ts";
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

/** What ends the drilling at once, in words; common practice of the drill test, no source. */
export const stopOnTheSpot = (card: CardId, answers: Answers): string | undefined => {
  if (card !== "drill") return undefined;
  const { out = "", under = "" } = answers;
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

/** The first step of a card where drilling had to end, and why. */
export const stopOfCard = (
  draft: CardDraft | undefined,
): { readonly step: string; readonly words: string } | undefined => {
  for (const step of draft?.steps ?? []) {
    const words = stopOnTheSpot(draft!.card, answersAt(draft, step.id));
    if (words !== undefined) return { step: step.id, words };
  }
  return undefined;
};
