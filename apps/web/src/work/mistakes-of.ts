import type { Issue } from "@floorworthy/job";
import type { Mistake } from "./messages.ts";

/** The reader's issues as the page shows them. */
export const mistakesOf = (issues: readonly Issue[]): readonly Mistake[] =>
  issues.map(({ path, line, file, message, hint }) => ({
    path,
    line: file === undefined ? line : undefined,
    message: file === undefined ? message : `${file}, line ${line}: ${message}`,
    hint,
  }));
