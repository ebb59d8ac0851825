import { assess } from "@floorworthy/assess";
import { sheetNames, sheets } from "@floorworthy/papers";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperAndDay, withPaper } from "../paper-option.ts";
import { writeSheets } from "../write-sheet.ts";

interface SheetOptions {
  readonly out: string;
  readonly paper: string;
  readonly date?: string;
  readonly name: string;
  readonly all?: boolean;
}

export const sheetCommand = (program: Command): void => {
  withPaper(
    jobCommand(program, "sheet", "the papers of a job, one page each, to scale, as PDF and SVG")
      .requiredOption("--out <dir>", "folder to write to")
      .option("--name <sheet>", `one of: ${sheetNames.join(", ")}`, "contractor")
      .option("--all", "every sheet this job may have"),
  ).action(
    withJob(async (job, { out, name, all, ...asked }: SheetOptions, path): Promise<ExitCode> => {
      const on = paperAndDay(asked);
      if (!on) return 2;
      const wanted = all ? sheets : sheets.filter((sheet) => sheet.name === name);
      if (wanted.length === 0) {
        console.error(`--name ${name}: there is no such sheet. Write one of ${sheetNames.join(", ")}.`);
        return 2;
      }
      const written = await writeSheets(wanted, job, assess(job), { out, jobFile: path, ...on });
      return written === "some" ? 0 : 3;
    }),
  );
};
