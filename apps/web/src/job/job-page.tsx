import { writtenTree } from "@floorworthy/job/listing";
import { useEffect, useMemo, useState } from "react";
import type { Session } from "../api/session.ts";
import { FormProvider } from "../form/form-context.ts";
import { OutcomeStrip } from "../outcome/outcome-strip.tsx";
import { PlanPart } from "../plan/plan-part.tsx";
import type { Units } from "../work/messages.ts";
import { useAnswer } from "../work/use-answer.ts";
import { JobParts } from "./job-parts.tsx";
import { ClashNotice, KeepingLine } from "./keeping-line.tsx";
import { type OpenDocument, useDocument } from "./use-document.ts";

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
  const tree = useMemo(() => writtenTree(open.text), [open.text]);
  const hand = session.person?.role === "reader" ? ("only-looks" as const) : ("writes" as const);
  const shown = units ?? good?.job.units ?? "inch-pound";
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
        <h2 className="job-name">{good?.job.title ?? "Job"}</h2>
        <KeepingLine open={open} hand={hand} />
        <ClashNotice open={open} />
        {good && <OutcomeStrip assessment={good.assessment} state={state} />}
        {!good && state === "working" && <p role="status">Working it out …</p>}
        {fault && <p role="alert">{fault}</p>}
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

/** Ctrl+Z and Ctrl+Y (or Ctrl+Shift+Z) outside of text fields, which have their own. */
const useUndoKeys = ({ undo, redo }: OpenDocument) => {
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey) return;
      if (event.target instanceof HTMLElement && event.target.matches("input, textarea, select")) return;
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
