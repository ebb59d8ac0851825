import { mergeTexts } from "@floorworthy/job/editing";
import { useCallback, useEffect, useRef, useState } from "react";
import { Refused, Unreached } from "../api/ask.ts";
import { type Kind, type Revision, readDocument, saveDocument } from "../api/documents.ts";
import { ifAllowed } from "./kept-here.ts";
import { firstStep, type Steps, stepOn, withTheirs } from "./steps.ts";

/** How what is typed stands to what the server keeps. */
export type Keeping =
  | { readonly state: "kept" | "changed" | "keeping" | "unreached" }
  | { readonly state: "refused"; readonly words: string }
  | { readonly state: "clash"; readonly head: Revision; readonly paths: readonly string[] };

export interface OpenDocument {
  readonly id: string;
  readonly base: Revision;
  readonly text: string;
  readonly keeping: Keeping;
  /** somebody else's changes came in with ours, and whose */
  readonly joined: string | undefined;
  /** makes a new text of the present one; a step that can be undone */
  readonly change: (words: string, make: (text: string) => string) => void;
  readonly undo: (() => void) | undefined;
  readonly redo: (() => void) | undefined;
  /** where two versions clash, one goes on; all else that either wrote stays */
  readonly settle: (which: "mine" | "theirs") => void;
}

const PAUSE = 700;
const AGAIN = 4000;

type Opening = OpenDocument | { readonly fault: string } | undefined;

/** A document in hand: every change is kept on this device at once and at the server after a moment. */
export const useDocument = (kind: Kind, id: string): Opening => {
  const [base, setBase] = useState<Revision>();
  const [steps, setSteps] = useState<Steps>({ texts: [], words: [], at: -1 });
  const [keeping, setKeeping] = useState<Keeping>({ state: "kept" });
  const [joined, setJoined] = useState<string>();
  const [fault, setFault] = useState<string>();
  const text = steps.texts[steps.at];
  const latest = useRef({ base, text });
  latest.current = { base, text };

  useEffect(() => {
    let current = true;
    const begin = async () => {
      const draft = await ifAllowed((db) => db.get("drafts", id));
      const head = await readDocument(kind, id).catch(async (error) => {
        const seen = error instanceof Unreached ? await ifAllowed((db) => db.get("seen", id)) : undefined;
        if (!seen) throw error;
        return seen;
      });
      await ifAllowed((db) => db.put("seen", head));
      if (!current) return;
      const typed = draft && draft.text !== head.text ? draft : undefined;
      setBase(typed?.base ?? head);
      setSteps(firstStep(typed?.text ?? head.text));
      setKeeping({ state: typed ? "changed" : "kept" });
    };
    begin().catch((error) => current && setFault(error instanceof Error ? error.message : String(error)));
    return () => {
      current = false;
    };
  }, [kind, id]);

  const change = useCallback(
    (words: string, make: (text: string) => string) => setSteps((before) => stepOn(before, words, make)),
    [],
  );

  const join = useCallback((on: Revision, head: Revision, now: string) => {
    setBase(head);
    setSteps((before) => withTheirs(before, on.text, head.text, now));
    setKeeping({ state: now === head.text ? "kept" : "changed" });
  }, []);

  const keep = useCallback(async () => {
    const { base: on, text: mine } = latest.current;
    if (!on || mine === undefined || mine === on.text) return;
    setKeeping({ state: "keeping" });
    try {
      const revision = await saveDocument(kind, id, on.number, mine);
      setBase(revision);
      await ifAllowed((db) => db.put("seen", revision));
      if (latest.current.text === mine) {
        await ifAllowed((db) => db.delete("drafts", id));
        setKeeping({ state: "kept" });
      } else setKeeping({ state: "changed" });
    } catch (error) {
      if (error instanceof Unreached) setKeeping({ state: "unreached" });
      else if (error instanceof Refused && error.status === 409) {
        const head = error.body.head as Revision;
        const merged = mergeTexts(on.text, latest.current.text ?? mine, head.text);
        if (!merged.ok) setKeeping({ state: "clash", head, paths: merged.paths });
        else {
          join(on, head, merged.text);
          setJoined(head.by);
        }
      } else setKeeping({ state: "refused", words: error instanceof Error ? error.message : String(error) });
    }
  }, [kind, id, join]);

  useEffect(() => {
    if (!base || text === undefined) return;
    if (text === base.text) {
      ifAllowed((db) => db.delete("drafts", id)); // a change taken back is no draft
      setKeeping((before) => (before.state === "keeping" ? before : { state: "kept" }));
      return;
    }
    ifAllowed((db) => db.put("drafts", { id, base, text }));
    if (keeping.state === "kept") return setKeeping({ state: "changed" });
    if (keeping.state === "keeping" || keeping.state === "clash") return;
    const timer = setTimeout(keep, keeping.state === "unreached" || keeping.state === "refused" ? AGAIN : PAUSE);
    return () => clearTimeout(timer);
  }, [id, base, text, keeping, keep]);

  // who goes to another page within the pause has written too
  const leaving = useRef(keep);
  leaving.current = keep;
  useEffect(() => () => void leaving.current(), []);

  useEffect(() => {
    const now = () => keep();
    globalThis.addEventListener("online", now);
    return () => globalThis.removeEventListener("online", now);
  }, [keep]);

  const move = (by: 1 | -1) => () => setSteps((all) => ({ ...all, at: all.at + by }));
  if (fault !== undefined) return { fault };
  if (!base || text === undefined) return undefined;
  return {
    id,
    base,
    text,
    keeping,
    joined,
    change,
    undo: steps.at > 0 ? move(-1) : undefined,
    redo: steps.at < steps.texts.length - 1 ? move(1) : undefined,
    settle: (which) => {
      if (keeping.state !== "clash") return;
      const merged = mergeTexts(base.text, text, keeping.head.text, which);
      join(base, keeping.head, merged.ok ? merged.text : text);
      setJoined(keeping.head.by);
    },
  };
};
