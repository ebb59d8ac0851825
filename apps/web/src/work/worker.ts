import { calls } from "./calls.ts";
import type { Question, Reply } from "./messages.ts";

const post = globalThis.postMessage as (reply: Reply) => void;

globalThis.addEventListener("message", async ({ data }: MessageEvent<Question>) => {
  const { number, call, args } = data;
  const tell = (done: number, of: number) => post({ number, kind: "progress", done, of });
  try {
    const work = calls[call as keyof typeof calls] as (tell: unknown, ...args: readonly unknown[]) => Promise<unknown>;
    post({ number, kind: "value", value: await work(tell, ...args) });
  } catch (error) {
    post({
      number,
      kind: "fault",
      words: `The calculation broke, and that is a fault of this program: ${String(error)}`,
    });
  }
});
