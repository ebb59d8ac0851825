import { useCallback, useEffect, useMemo, useRef, useState } from "react";
import { ifAllowed } from "../job/kept-here.ts";
import { today } from "../job/today.ts";
import { useWork } from "../work/use-work.ts";
import type { Card } from "./cards.ts";
import { type CardDraft, draftId, emptyDraft, isBegun, isDone } from "./draft.ts";
import { entriesOfDraft } from "./entries.ts";
import type { CardPlan, Step } from "./question.ts";
import { useFieldJob } from "./use-field-job.ts";
import { withEntries } from "./with-entries.ts";

export interface CardInHand {
  readonly text: string | undefined;
  /** with what is typed on the card */
  readonly live: string | undefined;
  readonly plan: CardPlan | undefined;
  readonly draft: CardDraft | undefined;
  readonly steps: readonly Step[];
  readonly fault: string | undefined;
  readonly change: (make: (draft: CardDraft) => CardDraft) => void;
  readonly clear: () => void;
}

/** A card of a job: its plan from everything known on this device, and what was typed on it. */
export const useCard = (jobId: string, card: Card): CardInHand | undefined => {
  const date = useMemo(today, []);
  const job = useFieldJob(jobId);
  const [draft, setDraft] = useState<CardDraft>();
  const [looked, setLooked] = useState<"not-yet" | "looked">("not-yet");
  const key = draftId(jobId, card.id);

  useEffect(() => {
    let current = true;
    ifAllowed((db) => db.get("cards", key)).then((kept) => {
      if (!current) return;
      // a card that was done on another day makes way for a new one
      if (kept && !(isDone(kept) && kept.date !== date)) setDraft(kept);
      setLooked("looked");
    });
    return () => {
      current = false;
    };
  }, [key, date]);

  const live = useMemo(
    () => (job.text !== undefined && draft ? withEntries(job.text, entriesOfDraft(draft)) : job.text),
    [job.text, draft],
  );
  const work = useWork(
    "cardPlan",
    live === undefined || job.text === undefined ? undefined : [card.id, live, job.text, date],
    {
      desk: "answer",
      pause: 150,
    },
  );
  const good = useRef<CardPlan>(undefined);
  if (work.value?.ok) good.current = work.value.value;
  const plan = good.current;

  // while nothing is said the card follows the job
  const steps = (draft && isBegun(draft) ? draft.steps : plan?.steps) ?? draft?.steps ?? noSteps;
  const first = useRef(steps);
  first.current = steps;
  const change = useCallback(
    (make: (draft: CardDraft) => CardDraft) =>
      setDraft((before) => {
        const begun =
          before && isBegun(before)
            ? before
            : { ...emptyDraft(jobId, card.id, date, first.current), at: before?.at ?? "" };
        const after = make(begun);
        ifAllowed((db) => db.put("cards", after));
        return after;
      }),
    [jobId, card.id, date],
  );
  const clear = useCallback(() => {
    ifAllowed((db) => db.delete("cards", key));
    setDraft(undefined);
  }, [key]);

  const told = work.value && !work.value.ok ? work.value.why : undefined;
  if (looked === "not-yet") return undefined;
  return { text: job.text, live, plan, draft, steps, fault: job.fault ?? work.fault ?? told, change, clear };
};

const noSteps: readonly Step[] = [];
