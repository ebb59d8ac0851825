import type { Args, CallName, Value } from "./calls.ts";
import type { Question, Reply } from "./messages.ts";

type OnReply<K extends CallName> = (
  reply:
    | { readonly kind: "progress"; readonly done: number; readonly of: number }
    | { readonly kind: "value"; readonly value: Value<K> }
    | { readonly kind: "fault"; readonly words: string },
) => void;

/** A worker that does one thing at a time; a newer question of the same name takes the place of a waiting one. */
export interface Desk {
  /** @returns takes the question back; work that has begun is stopped, at once or when something else has waited for it */
  readonly ask: <K extends CallName>(call: K, args: Args<K>, onReply: OnReply<K>) => (when: "now" | "soon") => void;
  /** starts the worker before the first question, so that it is read by then */
  readonly open: () => void;
}

/** After this long a superseded calculation is given up and the worker started afresh, ms. */
const patience = 2500;

export const openDesk = (): Desk => {
  let worker: Worker | undefined;
  let count = 0;
  let current:
    | { question: Question; at: number; onReply: OnReply<CallName>; wanted: "wanted" | "given-up" }
    | undefined;
  const waiting: { question: Question; onReply: OnReply<CallName> }[] = [];

  const start = (): Worker => {
    const fresh = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    fresh.onmessage = ({ data }: MessageEvent<Reply>) => {
      if (data.number !== current?.question.number) return;
      const { wanted, onReply } = current;
      if (data.kind !== "progress") {
        current = undefined;
        next();
      }
      if (wanted === "wanted") onReply(data as Parameters<OnReply<CallName>>[0]);
    };
    fresh.onerror = () => {
      const broken = current;
      current = undefined;
      worker = undefined;
      if (broken?.wanted === "wanted")
        broken.onReply({ kind: "fault", words: "The calculation could not be started. Load the page anew." });
      next();
    };
    return fresh;
  };
  const drop = () => {
    worker?.terminate();
    worker = undefined;
    current = undefined;
  };
  const next = () => {
    if (current?.wanted === "given-up" && performance.now() - current.at > patience) drop();
    if (current) {
      if (current.wanted === "given-up" && waiting.length > 0) setTimeout(next, 250);
      return;
    }
    const first = waiting.shift();
    if (!first) return;
    worker ??= start();
    current = { ...first, at: performance.now(), wanted: "wanted" };
    worker.postMessage(first.question);
  };
  return {
    open: () => {
      worker ??= start();
    },
    ask: (call, args, onReply) => {
      count += 1;
      const question = { number: count, call, args };
      waiting.push({ question, onReply: onReply as OnReply<CallName> });
      next();
      return (when) => {
        const place = waiting.findIndex((each) => each.question.number === question.number);
        if (place >= 0) waiting.splice(place, 1);
        else if (current?.question.number === question.number) {
          current.wanted = "given-up";
          if (when === "now") drop();
          setTimeout(next, when === "now" ? 0 : patience);
        }
      };
    },
  };
};

/** One desk for the answer that is always in sight, one for everything else. */
export const desks = { answer: openDesk(), side: openDesk() } as const;
