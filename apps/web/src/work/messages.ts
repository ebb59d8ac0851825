import type { Assessment, FirstLook } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";

export type Units = Job["units"];

/** One mistake in the file. */
export interface Mistake {
  readonly path: string;
  readonly line: number | undefined;
  readonly message: string;
  readonly hint: string | undefined;
}

/** What is known of a job's text at once. Without a job it could not be read. */
export interface Look {
  readonly text: string;
  readonly mistakes: readonly Mistake[];
  /** odd, but read */
  readonly warnings: readonly Mistake[];
  readonly found: (FirstLook & { readonly job: Job }) | undefined;
}

/** What the whole judgement makes of a job's text; undefined where it cannot be read. */
export interface Judged {
  readonly text: string;
  readonly job: Job;
  readonly assessment: Assessment;
  /** the plan and the section as SVG */
  readonly drawing: string;
  readonly section: string;
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
