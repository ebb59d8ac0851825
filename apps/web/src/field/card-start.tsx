import type { Card } from "./cards.ts";
import type { CardInHand } from "./use-card.ts";

/** Before the first: what the card is for, what to know, how the job stands. */
export const CardStart = ({ card, hand }: { card: Card; hand: CardInHand }) => {
  const { plan, steps } = hand;
  if (!plan) return null;
  return (
    <>
      {plan.stop.length === 0 && <p className="card-sentence">{plan.sentence}</p>}
      {plan.before.length > 0 && plan.open !== "none" && (
        <details className="card-more" open={plan.before.length <= 4}>
          <summary>Before you begin</summary>
          <ul>
            {plan.before.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
      {steps.length > 0 && (
        <p className="quiet">
          {steps.length} {card.id === "torque" ? "stops" : "steps"}: {steps.map(({ name }) => name).join(", ")}. What
          nobody knows is skipped.
        </p>
      )}
    </>
  );
};
