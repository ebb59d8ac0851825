import { Mistakes } from "../../file/job-file.tsx";
import { MarginAnswer } from "../../margin/margin-answer.tsx";
import { OpenQuestions } from "../../outcome/open-questions.tsx";
import { OutcomeRest } from "../../outcome/outcome-rest.tsx";
import { MakerPage } from "../../page/maker-page.tsx";
import type { PartProps } from "../part-props.ts";
import { MomentPicture } from "../pictures/moment-picture.tsx";

/** The two answers, never merged, and all that goes with them. The page's is there first. */
export const AnswerPart = ({ open, answers, units }: PartProps) => {
  const { good, last, state } = answers;
  const page = good?.assessment.page ?? last?.found?.page;
  return (
    <>
      {last && last.mistakes.length + last.warnings.length > 0 && (
        <Mistakes mistakes={last.mistakes} warnings={last.warnings} />
      )}
      {good && <p className="answer-lead">{good.assessment.sentence}</p>}
      {good && <OpenQuestions assessment={good.assessment} />}
      <div className="answers" data-state={good ? state : "settled"}>
        {page && <MakerPage page={page} units={units} />}
        {good && <MarginAnswer margin={good.assessment.margin} units={units} />}
        {page && !good && <p role="status">The margin is being worked out …</p>}
      </div>
      {good && <OutcomeRest assessment={good.assessment} units={units} />}
      {good && good.assessment.stops.length === 0 && <MomentPicture text={open.text} units={units} />}
    </>
  );
};
