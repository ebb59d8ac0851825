import { Mistakes } from "../../file/job-file.tsx";
import { MarginAnswer } from "../../margin/margin-answer.tsx";
import { OutcomeRest } from "../../outcome/outcome-rest.tsx";
import { MakerPage } from "../../page/maker-page.tsx";
import type { PartProps } from "../part-props.ts";

/** The two answers, never merged, and all that goes with them. */
export const AnswerPart = ({ answers, units }: PartProps) => {
  const { good, last, state } = answers;
  return (
    <>
      {last && last.mistakes.length + last.warnings.length > 0 && (
        <Mistakes mistakes={last.mistakes} warnings={last.warnings} />
      )}
      {good && (
        <div className="answers" data-state={state}>
          <MakerPage page={good.assessment.page} units={units} />
          <MarginAnswer margin={good.assessment.margin} units={units} />
        </div>
      )}
      {good && <OutcomeRest assessment={good.assessment} units={units} />}
    </>
  );
};
