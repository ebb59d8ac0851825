import type { OpenDocument } from "../job/use-document.ts";
import type { Units } from "../work/messages.ts";
import type { Answers } from "../work/use-answer.ts";
import { Plan } from "./plan.tsx";

/** The bay from above, always in sight. */
export const PlanPart = ({
  answers,
  units,
}: {
  readonly open: OpenDocument;
  readonly answers: Answers;
  readonly units: Units;
  readonly hand: "writes" | "only-looks";
}) => {
  const { good } = answers;
  return good ? <Plan layout={good.assessment.layout} job={good.job} drawing={good.drawing} units={units} /> : null;
};
