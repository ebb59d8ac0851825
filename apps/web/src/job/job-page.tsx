import { writtenTree } from "@floorworthy/job/listing";
import { useEffect, useMemo, useState } from "react";
import type { Session } from "../api/session.ts";
import { CardLinks } from "../field/card-links.tsx";
import { FormProvider } from "../form/form-context.ts";
import { OutcomeStrip } from "../outcome/outcome-strip.tsx";
import { PlanPart } from "../plan/plan-part.tsx";
import { desks } from "../work/desk.ts";
import type { Units } from "../work/messages.ts";
import { useAnswer } from "../work/use-answer.ts";
import { FirstSteps } from "./first-steps/first-steps.tsx";
import { JobParts } from "./job-parts.tsx";
import { ClashNotice, KeepingLine } from "./keeping-line.tsx";
import { type OpenDocument, useDocument } from "./use-document.ts";

// the worker is read while the job is fetched
desks.answer.open();

/** One job: the outcome on top, the plan beside, its parts in the order of the work. */
export const JobPage = (props: {
  readonly id: string;
  readonly part: string | undefined;
  readonly session: Session;
  readonly units: Units | undefined;
  readonly onUnits: (units: Units) => void;
}) => {
  const open = useDocument("jobs", props.id);
  if (open === undefined) return <p role="status">Fetching the job …</p>;
  if ("fault" in open) return <p role="alert">{open.fault}</p>;
  return <Opened {...props} open={open} />;
};

const Opened = ({
  open,
  part,
  session,
  units,
  onUnits,
}: Parameters<typeof JobPage>[0] & { readonly open: OpenDocument }) => {
  const answers = useAnswer(open.text, units);
  const { good, last, state, fault } = answers;
  const job = good?.job ?? last?.found?.job;
  const tree = useMemo(() => writtenTree(open.text), [open.text]);
  const hand = session.person?.role === "reader" ? ("only-looks" as const) : ("writes" as const);
  const shown = units ?? job?.units ?? "inch-pound";
  const [announced, setAnnounced] = useState(shown);
  useEffect(() => {
    if (announced === shown) return;
    setAnnounced(shown);
    onUnits(shown);
  }, [announced, shown, onUnits]);
  const form = useMemo(
    () => ({ tree, change: open.change, mistakes: last?.text === open.text ? last.mistakes : [], units: shown, hand }),
    [tree, open.change, open.text, last, shown, hand],
  );
  useUndoKeys(open);
  return (
    <FormProvider value={form}>
      <main className="job" data-state={state}>
        <div className="job-head">
          <h2 className="job-name">{job?.title ?? "Job"}</h2>
          <KeepingLine open={open} hand={hand} />
          {hand === "writes" && <CardLinks jobId={open.id} />}
        </div>
        <ClashNotice open={open} />
        <OutcomeStrip answers={answers} />
        {fault && <p role="alert">{fault}</p>}
        <FirstSteps open={open} units={shown} />
        <div className="job-table">
          <PlanPart open={open} answers={answers} units={shown} />
          <JobParts open={open} answers={answers} units={shown} part={part} />
        </div>
        {good && (
          <aside className="cautions" aria-label="Cautions">
            {good.assessment.cautions.map((caution) => (
              <p key={caution}>{caution}</p>
            ))}
          </aside>
        )}
      </main>
    </FormProvider>
  );
};

/** Where the browser undoes typing itself. */
const typed = "textarea, input:not([type=checkbox], [type=radio], [type=file], [type=range]), [contenteditable]";

/** Ctrl+Z and Ctrl+Y (or Ctrl+Shift+Z) outside of text fields, which have their own. */
const useUndoKeys = ({ undo, redo }: OpenDocument) => {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      if (event.target instanceof HTMLElement && event.target.matches(typed)) return;
      const key = event.key.toLowerCase();
      const step =
        key === "z" && !event.shiftKey ? undo : key === "y" || (key === "z" && event.shiftKey) ? redo : undefined;
      if (!step) return;
      event.preventDefault();
      step();
    };
    globalThis.addEventListener("keydown", onKey);
    return () => globalThis.removeEventListener("keydown", onKey);
  }, [undo, redo]);
};
