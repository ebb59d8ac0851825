import type { PrintedLine } from "../layout/index.ts";
import type { Subject } from "./subjects.ts";

/** A sentence, or a label with its value: as much text as says one thing. */
export interface Statement {
  readonly text: string;
  /** values stand from here on: after a table's label */
  readonly from: number;
  /** which printed line a place of the text stands in */
  readonly lineAt: (place: number) => PrintedLine;
  /** models its place speaks of: a heading's, a column's; empty for all */
  readonly models: readonly string[];
  /** what the heading and the sentence before it spoke of */
  readonly lead: readonly Subject[];
  readonly form: "sentence" | "cell" | "note";
}
