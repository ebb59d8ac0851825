import { JobFile } from "../../file/job-file.tsx";
import type { PartProps } from "../part-props.ts";

/** The papers of the job, and the job as a file. */
export const PapersPart = ({ open, answers }: PartProps) => (
  <JobFile
    text={open.text}
    mistakes={answers.last?.mistakes ?? []}
    warnings={answers.last?.warnings ?? []}
    onWrite={(written) => open.change("type the file", () => written)}
  />
);
