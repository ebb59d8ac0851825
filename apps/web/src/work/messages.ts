import type { Assessment } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";

export type Units = Job["units"];

/** A fact typed over, by its path in the file (`floor.readings[2].thickness`). */
export interface Edit {
  readonly path: string;
  readonly written: string;
}

/** What the page asks of the worker: this file with these facts written anew. */
export interface Question {
  readonly number: number;
  readonly text: string;
  readonly edits: readonly Edit[];
  /** undefined: as the file says */
  readonly units: Units | undefined;
  /** lift sheets a job may refer to, by file name */
  readonly sheets: Readonly<Record<string, string>>;
}

/** One mistake in the file. */
export interface Mistake {
  readonly path: string;
  readonly line: number | undefined;
  readonly message: string;
  readonly hint: string | undefined;
}

/** A fact of the file that can be typed over. */
export interface FactField {
  readonly path: string;
  readonly group: string;
  readonly label: string;
  readonly written: string;
  /** what was understood; empty when it was not */
  readonly understood: string;
  readonly mistake: string | undefined;
}

/** What the worker hands back. Without a job the file could not be read; without an assessment nothing was judged. */
export interface Answer {
  readonly number: number;
  readonly text: string;
  readonly facts: readonly FactField[];
  readonly mistakes: readonly Mistake[];
  /** odd, but read */
  readonly warnings: readonly Mistake[];
  readonly job: Job | undefined;
  readonly assessment: Assessment | undefined;
  /** the plan as SVG */
  readonly drawing: string;
  /** a fault of ours, in words */
  readonly fault: string | undefined;
  readonly milliseconds: number;
}
