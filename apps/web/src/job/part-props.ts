import type { Units } from "../work/messages.ts";
import type { Answers } from "../work/use-answer.ts";
import type { OpenDocument } from "./use-document.ts";

/** What every part of a job is given. */
export interface PartProps {
  readonly open: OpenDocument;
  readonly answers: Answers;
  readonly units: Units;
}
