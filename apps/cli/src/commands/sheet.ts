import { sheetNames, sheets } from "@floorworthy/papers";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { printedOn, writeSheets } from "../write-sheet.ts";

interface SheetOptions {
  readonly out: string;
  readonly paper: string;
  readonly date?: string;
  readonly name: string;
  readonly all?: boolean;
}

export const sheetCommand = (program: Command): void => {
  jobCommand(program, "sheet", "the papers of a job, one page each, to scale, as PDF and SVG")
    .requiredOption("--out <dir>", "folder to write to")
    .option("--name <sheet>", `one of: ${sheetNames.join(", ")}`, "contractor")
    .option("--all", "every sheet this job may have")
    .option("--paper <size>", "letter or a4", "letter")
    .option("--date <date>", "date to print on it, YYYY-MM-DD (today unless given)")
    .action(
      withJob(async (job, { out, paper, date, name, all }: SheetOptions, path): Promise<ExitCode> => {
        if (paper !== "letter" && paper !== "a4") {
          console.error(`--paper ${paper}: write letter or a4.`);
          return 2;
        }
        const wanted = all ? sheets : sheets.filter((sheet) => sheet.name === name);
        if (wanted.length === 0) {
          console.error(`--name ${name}: there is no such sheet. Write one of ${sheetNames.join(", ")}.`);
          return 2;
        }
        const written = await writeSheets(wanted, job, { out, jobFile: path, date: printedOn(date), paper });
        return written === "some" ? 0 : 3;
      }),
    );
};
