import type { HitAdvice as Advice } from "@floorworthy/assess/hit";

/** What to do where the drill met something, and what never. */
export const HitAdvice = ({ advice }: { advice: Advice }) => (
  <section className="finding" aria-label="What to do">
    <p className="finding-said">{advice.sentence}</p>
    <ul>
      {advice.reasons.map((reason) => (
        <li key={reason}>{reason}</li>
      ))}
    </ul>
    {advice.ways
      .filter(({ state }) => state !== "closed")
      .map(({ id, title, steps, checkWords }) => (
        <div key={id}>
          <h4>{title}</h4>
          <ol className="ticks-list">
            {steps.map((step) => (
              <li key={step}>{step}</li>
            ))}
          </ol>
          <p className="quiet">{checkWords}</p>
        </div>
      ))}
    <h4>Never</h4>
    <ul>
      {advice.never.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  </section>
);
