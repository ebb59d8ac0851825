import { Fragment } from "react";
import { HitAdvice } from "../job/hit-advice.tsx";
import { useWork } from "../work/use-work.ts";
import { WorkState } from "../work/work-state.tsx";
import { AskRow } from "./ask-row.tsx";
import type { Card } from "./cards.ts";
import { answered, answersAt, readAnswers } from "./draft.ts";
import { headAndRest } from "./head-and-rest.ts";
import { PhotoRow } from "./photo-row.tsx";
import type { CardPlan, Step } from "./question.ts";
import { faultsAt, openLooks, stopOnTheSpot } from "./rules.ts";
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
  const spot = stopOnTheSpot(card.id, step, answers);
  const open = step.is === "looks" || card.id !== "drill" ? [] : openLooks(draft, hand.steps);
  const rows = (rank: "rare" | undefined) =>
    step.questions
      .filter((question) => question.rank === rank)
      .map((question) => {
        const value = answers[question.key] ?? "";
        return (
          <Fragment key={question.key}>
            <AskRow
              question={question}
              value={value}
              fault={told === "all" || value.trim() !== "" ? faults[question.key] : undefined}
              onChange={(next) => change((before) => answered(before, step, question.key, next))}
            />
            {spot?.key === question.key && <Stopped card={card} hand={hand} step={step} words={spot.words} />}
          </Fragment>
        );
      });
  const rare = rows("rare");
  return (
    <>
      {says && <Says {...says} />}
      {open.length > 0 && (
        <p className="card-says" data-weight="look">
          No hole yet. Not seen and clear: {open.join("; ")}.
        </p>
      )}
      {rows(undefined)}
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

/** What the years say of a nut: its head, and the rest to open. */
const Says = ({ words, weight }: CardPlan["says"][string]) => {
  const { head, rest } = headAndRest(words);
  return (
    <div className="card-says" data-weight={weight}>
      <p>{head}</p>
      {rest !== "" && (
        <details>
          <summary>Why</summary>
          <p>{rest}</p>
        </details>
      )}
    </div>
  );
};

/** Drilling ended here; where the drill met something it is said what now. */
const Stopped = (props: {
  readonly card: Card;
  readonly hand: CardInHand;
  readonly step: Step;
  readonly words: string;
}) => {
  const { card, hand, step, words } = props;
  const { met, depth } = readAnswers(step, answersAt(hand.draft, step.id));
  const { text, plan } = hand;
  const hit = card.id === "installation" && met !== undefined;
  const asked = hit && depth !== undefined && text !== undefined && plan ? { text, plan, depth, met } : undefined;
  const work = useWork(
    "hitPlan",
    asked && [asked.text, asked.plan.units, { hole: step.id, depth: asked.depth, met: asked.met }],
  );
  return (
    <>
      <StopPanel
        id="spot-stop"
        lines={[
          words,
          ...(hit && depth === undefined ? ["Write how deep it stopped; then it says what now."] : []),
          ...(asked && work.value && !work.value.ok ? [work.value.why] : []),
        ]}
      />
      {asked && <WorkState work={work} what="Looking for a way on" />}
      {asked && work.value?.ok && <HitAdvice advice={work.value.value} />}
    </>
  );
};
