import { mergeTexts } from "@floorworthy/job/editing";
import { useEffect, useMemo, useState } from "react";
import { Unreached } from "../api/ask.ts";
import { type Revision, readDocument } from "../api/documents.ts";
import { ifAllowed } from "../job/kept-here.ts";
import { seenUpTo, useOutbox } from "./outbox.ts";
import { notSeen } from "./waiting.ts";
import { withEntries } from "./with-entries.ts";

export interface FieldJob {
  /** with everything that waits on this device taken in; undefined until one was found */
  readonly text: string | undefined;
  readonly fault: string | undefined;
}

/** A job for the garage: what this device keeps of it at once, the server's when it answers. */
export const useFieldJob = (id: string): FieldJob => {
  const { items } = useOutbox();
  const [head, setHead] = useState<Revision>();
  const [typed, setTyped] = useState<{ readonly base: Revision; readonly text: string }>();
  const [fault, setFault] = useState<string>();
  const [tries, setTries] = useState(0);
  const taken = Math.max(
    0,
    ...items.map(({ jobId, fate }) => (jobId === id && fate.state === "sent" ? fate.revision : 0)),
  );

  useEffect(() => {
    let current = true;
    const look = async () => {
      const draft = await ifAllowed((db) => db.get("drafts", id));
      const seen = await ifAllowed((db) => db.get("seen", id));
      if (current && seen) setHead((before) => (before && before.number >= seen.number ? before : seen));
      if (current) setTyped(draft);
      if (seen && seen.number >= taken && tries > 0 && taken > 0) return seenUpTo(id, seen.number);
      try {
        const fresh = await readDocument("jobs", id);
        await ifAllowed((db) => db.put("seen", fresh));
        if (!current) return;
        setHead(fresh);
        setFault(undefined);
        await seenUpTo(id, fresh.number);
      } catch (error) {
        if (!current || seen) return;
        setFault(
          error instanceof Unreached
            ? "This job has not been opened on this device yet. Open it once where there is a connection."
            : String((error as Error).message),
        );
      }
    };
    look();
    return () => {
      current = false;
    };
  }, [id, taken, tries]);

  useEffect(() => {
    const again = () => setTries((count) => count + 1);
    globalThis.addEventListener("online", again);
    return () => globalThis.removeEventListener("online", again);
  }, []);

  const text = useMemo(() => {
    if (!head) return undefined;
    const merged = typed ? mergeTexts(typed.base.text, typed.text, head.text) : undefined;
    const base = merged?.ok ? merged.text : head.text;
    return withEntries(
      base,
      notSeen(items, id, head.number).map(({ body }) => body),
    );
  }, [head, typed, items, id]);
  return { text, fault };
};
