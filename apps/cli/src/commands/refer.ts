import { assess } from "@floorworthy/assess";
import { referral } from "@floorworthy/assess/referral";
import { referralSheet } from "@floorworthy/papers";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperAndDay, withPaper } from "../paper-option.ts";
import { referralLines } from "../print/referral.ts";
import { teller, writeSheets } from "../write-sheet.ts";

interface ReferOptions {
  readonly json?: boolean;
  readonly workings?: boolean;
  readonly out?: string;
  readonly paper: string;
  readonly date?: string;
}

export const referCommand = (program: Command): void => {
  withPaper(
    jobCommand(program, "refer", "the pack for a licensed engineer, filled as far as anything is known")
      .option("--workings", "unfold the loads")
      .option("--json", "print the pack as JSON")
      .option("--out <dir>", "write the sheet, PDF and SVG, to this folder"),
  ).action(
    withJob(async (job, { json, workings, out, ...asked }: ReferOptions, path): Promise<ExitCode> => {
      const on = paperAndDay(asked);
      if (!on) return 2;
      const assessment = assess(job);
      const pack = referral(job, assessment);
      console.log(
        json
          ? JSON.stringify(pack, null, 2)
          : referralLines(pack, job.units, workings ? "unfolded" : "folded").join("\n"),
      );
      if (out !== undefined)
        await writeSheets([referralSheet], job, assessment, { out, jobFile: path, ...on }, teller(json));
      return 0;
    }),
  );
};
