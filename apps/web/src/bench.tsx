import { useCallback, useState } from "react";
import { JobFile, Mistakes } from "./file/job-file.tsx";
import { SaveFile } from "./file/save-file.tsx";
import { MarginAnswer } from "./margin/margin-answer.tsx";
import { Numbers } from "./numbers/numbers.tsx";
import { OutcomeRest } from "./outcome/outcome-rest.tsx";
import { OutcomeStrip } from "./outcome/outcome-strip.tsx";
import { MakerPage } from "./page/maker-page.tsx";
import { Plan } from "./plan/plan.tsx";
import type { FactField, Units } from "./work/messages.ts";
import type { Answers, OpenFile } from "./work/use-answer.ts";

/** One job on the bench: outcome, plan, numbers, the two answers. */
export const Bench = (props: {
  readonly file: OpenFile;
  readonly setFile: (file: OpenFile) => void;
  readonly answers: Answers;
  readonly units: Units;
}) => {
  const { file, setFile, answers, units } = props;
  const { last, good, state } = answers;
  const [hand, setHand] = useState<"numbers" | "file">("numbers");
  const onType = useCallback(
    ({ path }: FactField, written: string) => {
      const others = file.edits.filter((edit) => edit.path !== path);
      setFile({ ...file, edits: [...others, { path, written }] });
    },
    [file, setFile],
  );
  const text = file.edits.length > 0 ? (last?.text ?? file.text) : file.text;
  return (
    <>
      {good && <OutcomeStrip assessment={good.assessment} state={state} />}
      {!good && state === "working" && <p role="status">Working it out …</p>}
      {last?.fault && <p role="alert">{last.fault}</p>}
      {!good && last && !last.fault && <Mistakes mistakes={last.mistakes} warnings={[]} />}
      <div className="table" data-state={state}>
        {good && <Plan layout={good.assessment.layout} job={good.job} drawing={good.drawing} units={units} />}
        <section className="hand" aria-labelledby="hand-title">
          <header>
            <h2 id="hand-title">What is known</h2>
            <fieldset className="looks">
              <legend className="unseen">How to write it</legend>
              {(["numbers", "file"] as const).map((way) => (
                <label key={way}>
                  <input type="radio" name="hand" checked={way === hand} onChange={() => setHand(way)} />
                  {way === "numbers" ? "numbers" : "job file"}
                </label>
              ))}
            </fieldset>
          </header>
          {hand === "numbers" ? (
            <>
              <Numbers facts={last?.facts ?? []} file={file} settled={state !== "working"} onType={onType} />
              {last && good && last.mistakes.length + last.warnings.length > 0 && (
                <Mistakes mistakes={last.mistakes} warnings={last.warnings} />
              )}
            </>
          ) : (
            <JobFile
              text={text}
              mistakes={last?.mistakes ?? []}
              warnings={last?.warnings ?? []}
              onWrite={(written) => setFile({ ...file, text: written, edits: [] })}
            />
          )}
          <SaveFile name={file.id} text={text} />
        </section>
      </div>
      {good && (
        <div className="answers" data-state={state}>
          <MakerPage page={good.assessment.page} units={units} />
          <MarginAnswer margin={good.assessment.margin} units={units} />
        </div>
      )}
      {good && <OutcomeRest assessment={good.assessment} units={units} />}
      {good && (
        <aside className="cautions" aria-label="Cautions">
          {good.assessment.cautions.map((caution) => (
            <p key={caution}>{caution}</p>
          ))}
        </aside>
      )}
    </>
  );
};
