import { answer } from "./answer.ts";
import type { Question } from "./messages.ts";

const post = globalThis.postMessage as (message: unknown) => void;

globalThis.addEventListener("message", ({ data }: MessageEvent<Question>) => {
  const from = performance.now();
  post({ ...answer(data), milliseconds: performance.now() - from });
});
