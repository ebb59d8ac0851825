import type { Answer, Question } from "./messages.ts";

/** Hands questions to a worker, one at a time. */
export interface Calculator {
  /** Replaces any question that waits; the answers to older ones are dropped. */
  readonly ask: (question: Omit<Question, "number">) => void;
  readonly stop: () => void;
}

/** After this long a superseded calculation is given up and the worker started afresh, ms. */
const patience = 3000;

export const startCalculator = (onAnswer: (answer: Answer) => void): Calculator => {
  let worker: Worker | undefined;
  let latest = 0;
  let asked: { readonly at: number } | undefined;
  let waiting: Question | undefined;

  const start = (): Worker => {
    const fresh = new Worker(new URL("./worker.ts", import.meta.url), { type: "module" });
    fresh.onmessage = ({ data }: MessageEvent<Answer>) => {
      asked = undefined;
      if (data.number === latest) onAnswer(data);
      send();
    };
    return fresh;
  };
  const send = () => {
    if (asked && performance.now() - asked.at > patience) {
      worker?.terminate();
      worker = undefined;
      asked = undefined;
    }
    if (asked || !waiting) return;
    worker ??= start();
    asked = { at: performance.now() };
    worker.postMessage(waiting);
    waiting = undefined;
  };
  return {
    ask: (question) => {
      latest += 1;
      waiting = { ...question, number: latest };
      send();
    },
    stop: () => worker?.terminate(),
  };
};
