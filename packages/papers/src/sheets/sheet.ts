import type { Assessment } from "@floorworthy/assess";
import type { Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing } from "../drawing/drawing.ts";
import type { Paper } from "./frame.ts";

export interface SheetOptions {
  /** the day the sheet is drawn, YYYY-MM-DD */
  readonly date: string;
  readonly paper: Paper;
}

/** One paper that travels: exactly one page, or Unable with the reason why this job may not have it. */
export interface Sheet {
  /** in file names and on the command line, e.g. "drill-card" */
  readonly name: string;
  readonly title: string;
  /** who takes it along, e.g. "for the person who drills the test holes" */
  readonly reader: string;
  readonly draw: (job: Job, assessment: Assessment, options: SheetOptions) => readonly Drawing[] | Unable;
}
