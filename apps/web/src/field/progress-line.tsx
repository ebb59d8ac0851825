import { type CardDraft, stepState } from "./draft.ts";
import type { Step } from "./question.ts";

const words = { open: "nothing said", typed: "typed, not kept yet", kept: "kept" } as const;

/** "3 of 11", with a mark for each: empty, half, full. It opens the list of all. */
export const ProgressLine = (props: {
  readonly steps: readonly Step[];
  readonly at: number;
  readonly draft: CardDraft | undefined;
  readonly listAddress: string;
}) => {
  const { steps, at, draft, listAddress } = props;
  const place = at < 0 ? "All" : `${at + 1} of ${steps.length}`;
  return (
    <a className="progress" href={listAddress} aria-label={`${place}: the whole list`}>
      <b>{place}</b>
      <span className="progress-marks" aria-hidden="true">
        {steps.map((step, i) => (
          <i
            key={step.id}
            data-state={stepState(draft, step)}
            data-here={i === at || undefined}
            title={words[stepState(draft, step)]}
          />
        ))}
      </span>
    </a>
  );
};
