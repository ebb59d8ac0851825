import { assess } from "@floorworthy/assess";
import { recordNames, recordSheets } from "@floorworthy/papers/records";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperAndDay, withPaper } from "../paper-option.ts";
import { writeSheets } from "../write-sheet.ts";

interface RecordOptions {
  readonly out: string;
  readonly paper: string;
  readonly date?: string;
  readonly name?: string;
  readonly all?: boolean;
}

export const recordCommand = (program: Command): void => {
  withPaper(
    jobCommand(
      program,
      "record",
      "what was done and found, on one page each: installation, anchors, owner's card, inspection, tag",
    )
      .requiredOption("--out <dir>", "folder to write to")
      .option("--name <record>", `one of: ${recordNames.join(", ")}`)
      .option("--all", "every record this job may have"),
  ).action(
    withJob(async (job, { out, name, all, ...asked }: RecordOptions, path): Promise<ExitCode> => {
      const on = paperAndDay(asked);
      if (!on) return 2;
      const chosen = all ? recordSheets : recordSheets.filter((sheet) => sheet.name === name);
      if (chosen.length === 0) {
        console.error(
          `${name === undefined ? "Neither --name nor --all is given" : `--name ${name}: there is no such record`}. Write --all, or --name with one of ${recordNames.join(", ")}.`,
        );
        return 2;
      }
      const written = await writeSheets(chosen, job, assess(job), { out, jobFile: path, ...on });
      return written === "some" ? 0 : 3;
    }),
  );
};
