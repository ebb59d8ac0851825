import type { Step } from "./question.ts";

/** Figures to hold a tape or a wrench to. */
export const Figures = ({ figures }: { figures: Step["figures"] }) => (
  <dl className="card-figures">
    {figures.map(({ words, figure }) => (
      <div key={words}>
        <dt>{words}</dt>
        <dd>{figure}</dd>
      </div>
    ))}
  </dl>
);
