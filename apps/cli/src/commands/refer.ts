import { assess } from "@floorworthy/assess";
import { referral } from "@floorworthy/assess/referral";
import { referralSheet } from "@floorworthy/papers";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperOf } from "../paper-option.ts";
import { referralLines } from "../print/referral.ts";
import { printedOn, writeSheet } from "../write-sheet.ts";

interface ReferOptions {
  readonly json?: boolean;
  readonly workings?: boolean;
  readonly out?: string;
  readonly paper: string;
  readonly date?: string;
}

export const referCommand = (program: Command): void => {
  jobCommand(program, "refer", "the pack for a licensed engineer, filled as far as anything is known")
    .option("--workings", "unfold the loads")
    .option("--json", "print the pack as JSON")
    .option("--out <dir>", "write the sheet, PDF and SVG, to this folder")
    .option("--paper <size>", "letter or a4", "letter")
    .option("--date <date>", "date to print on it, YYYY-MM-DD (today unless given)")
    .action(
      withJob(async (job, { json, workings, out, paper, date }: ReferOptions, path): Promise<ExitCode> => {
        const size = paperOf(paper);
        if (!size) return 2;
        const assessment = assess(job);
        const pack = referral(job, assessment);
        console.log(
          json
            ? JSON.stringify(pack, null, 2)
            : referralLines(pack, job.units, workings ? "unfolded" : "folded").join("\n"),
        );
        if (out !== undefined) {
          const printed = printedOn(date);
          const { name, title } = referralSheet;
          const pages = referralSheet.draw(job, assessment, { date: printed, paper: size });
          await writeSheet(pages, { out, jobFile: path, name, title: `${title}: ${job.title}`, date: printed });
        }
        return 0;
      }),
    );
};
