import { assess } from "@floorworthy/assess";
import { setOut } from "@floorworthy/assess/setout";
import { shimPlan } from "@floorworthy/assess/shims";
import { isUnable } from "@floorworthy/engine/quantities";
import { installerSheet } from "@floorworthy/papers";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperOf } from "../paper-option.ts";
import { setOutLines } from "../print/set-out.ts";
import { printedOn, writeSheet } from "../write-sheet.ts";
import { writeTemplates } from "../write-template.ts";

interface SetOutOptions {
  readonly json?: boolean;
  readonly workings?: boolean;
  readonly out?: string;
  readonly paper: string;
  readonly date?: string;
}

export const setOutCommand = (program: Command): void => {
  jobCommand(program, "setout", "column centres and every hole from two walls, the hole in depth, shims and torque")
    .option("--json", "print it as JSON")
    .option("--workings", "unfold the numbers of the hole")
    .option("--out <dir>", "folder for the installer's sheet and the full-size template of the base plates")
    .option("--paper <size>", "letter or a4", "letter")
    .option("--date <date>", "date to print on it, YYYY-MM-DD (today unless given)")
    .action(
      withJob(async (job, { json, workings, out, paper: wanted, date }: SetOutOptions, path): Promise<ExitCode> => {
        const paper = paperOf(wanted);
        if (!paper) return 2;
        const assessment = assess(job);
        const made = setOut(job, assessment);
        if (isUnable(made)) {
          if (json) console.log(JSON.stringify(made, null, 2));
          else console.error(`Not set out. ${made.reason}`);
          return 3;
        }
        const shims = shimPlan(job);
        console.log(
          json
            ? JSON.stringify({ ...made, shims }, null, 2)
            : setOutLines(made, shims, job.units, workings ? "unfolded" : "folded").join("\n"),
        );
        if (out) {
          const printed = printedOn(date);
          if (!json) console.log("");
          const say = json ? console.error : console.log;
          await writeSheet(
            installerSheet(job, assessment, { date: printed, paper }),
            {
              out,
              jobFile: path,
              name: "installer",
              title: `Installer's sheet: ${job.title}`,
              date: printed,
            },
            say,
          );
          for (const file of await writeTemplates(job, assessment, { out, jobFile: path, paper, date: printed }))
            say(file);
        }
        return made.drilling === "may-drill" ? 0 : 3;
      }),
    );
};
