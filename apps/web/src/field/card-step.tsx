import { HitAdvice } from "../job/hit-advice.tsx";
import { useWork } from "../work/use-work.ts";
import { WorkState } from "../work/work-state.tsx";
import { AskRow } from "./ask-row.tsx";
import type { Card } from "./cards.ts";
import { answersAt, readAnswers, withAnswer } from "./draft.ts";
import { PhotoRow } from "./photo-row.tsx";
import type { Step } from "./question.ts";
import { faultsAt, stopOnTheSpot } from "./rules.ts";
import { StopPanel } from "./stop-panel.tsx";
import type { CardInHand } from "./use-card.ts";

/** One hole, one nut, one truck: everything asked of it. */
export const CardStep = (props: {
  readonly jobId: string;
  readonly card: Card;
  readonly hand: CardInHand;
  readonly step: Step;
  /** faults of things left out are only told once one has tried to go on */
  readonly told: "all" | "typed-only";
}) => {
  const { jobId, card, hand, step, told } = props;
  const { draft, change, plan } = hand;
  const answers = answersAt(draft, step.id);
  const faults = faultsAt(draft, card.id, step);
  const says = plan?.says[step.id.toUpperCase()];
  const spot = stopOnTheSpot(card.id, answers);
  const rows = (rank: "rare" | undefined) =>
    step.questions
      .filter((question) => question.rank === rank)
      .map((question) => {
        const value = answers[question.key] ?? "";
        return (
          <AskRow
            key={question.key}
            question={question}
            value={value}
            fault={told === "all" || value.trim() !== "" ? faults[question.key] : undefined}
            onChange={(next) => change((before) => withAnswer(before, step.id, question.key, next))}
          />
        );
      });
  const rare = rows("rare");
  return (
    <>
      {says && (
        <p className="card-says" data-weight={says.weight}>
          {says.words}
        </p>
      )}
      {step.looks && (
        <ul className="card-looks">
          {step.looks.map(({ what, how }) => (
            <li key={what}>
              <b>{what}</b>: {how}
            </li>
          ))}
        </ul>
      )}
      {rows(undefined)}
      {spot && <StopPanel id="spot-stop" lines={[spot]} />}
      {card.id === "installation" && <Hit hand={hand} step={step} />}
      <PhotoRow jobId={jobId} place={`${card.id}/${step.id}`} step={step} draft={draft} change={change} />
      {rare.length > 0 && (
        <details className="card-more">
          <summary>Less often asked</summary>
          {rare}
        </details>
      )}
    </>
  );
};

/** The drill met something: what now. */
const Hit = ({ hand, step }: { hand: CardInHand; step: Step }) => {
  const { met, depth } = readAnswers(step, answersAt(hand.draft, step.id));
  const hit = met !== undefined && met !== "nothing";
  const { text, plan } = hand;
  const asked = hit && depth !== undefined && text !== undefined && plan ? { text, plan, depth, met } : undefined;
  const work = useWork(
    "hitPlan",
    asked && [asked.text, asked.plan.units, { hole: step.id, depth: asked.depth, met: asked.met }],
  );
  if (!hit) return null;
  return (
    <>
      <StopPanel
        id="hit-stop"
        lines={[
          `Stop drilling at ${step.id}.`,
          ...(depth === undefined ? ["Write how deep it stopped; then it says what now."] : []),
        ]}
      />
      {asked && <WorkState work={work} what="Looking for a way on" />}
      {asked && work.value?.ok && <HitAdvice advice={work.value.value} />}
    </>
  );
};
