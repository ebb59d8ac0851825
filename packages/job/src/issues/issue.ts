import type { IssueCode } from "./catalogue.ts";

/** One mistake in what a person wrote. Data, never thrown; all of a file's issues are returned at once. */
export interface Issue {
  readonly code: IssueCode;
  /** where in the form, e.g. `floor.readings[2].thickness` (list places count from 0); "" for the file as a whole */
  readonly path: string;
  /** line and column in the file, from 1 */
  readonly line: number;
  readonly column: number;
  /** what was read, shortened */
  readonly got: string;
  /** what is wrong, one sentence */
  readonly message: string;
  /** what to write instead, one sentence */
  readonly hint: string;
  /** name of the file, when it has one */
  readonly file?: string;
}

/** `job.yaml:12:5  floor.thickness: "six" is not a length. Write …` */
export const printIssue = (issue: Issue, name: string): string => {
  const where = issue.path === "" ? "" : `${issue.path}: `;
  return `${issue.file ?? name}:${issue.line}:${issue.column}  ${where}${issue.message} ${issue.hint}`.trimEnd();
};
