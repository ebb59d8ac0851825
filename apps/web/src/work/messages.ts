import type { Assessment } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";

export type Units = Job["units"];

/** One mistake in the file. */
export interface Mistake {
  readonly path: string;
  readonly line: number | undefined;
  readonly message: string;
  readonly hint: string | undefined;
}

/** What the worker makes of a job's text. Without a job it could not be read; without an assessment nothing was judged. */
export interface Answer {
  readonly text: string;
  readonly mistakes: readonly Mistake[];
  /** odd, but read */
  readonly warnings: readonly Mistake[];
  readonly job: Job | undefined;
  readonly assessment: Assessment | undefined;
  /** the plan as SVG */
  readonly drawing: string;
}

/** What the page asks of a worker. */
export interface Question {
  readonly number: number;
  readonly call: string;
  readonly args: readonly unknown[];
}

export type Reply =
  | { readonly number: number; readonly kind: "progress"; readonly done: number; readonly of: number }
  | { readonly number: number; readonly kind: "value"; readonly value: unknown }
  | { readonly number: number; readonly kind: "fault"; readonly words: string };
