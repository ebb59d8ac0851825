import { assess } from "@floorworthy/assess";
import { setOut } from "@floorworthy/assess/setout";
import { shimPlan } from "@floorworthy/assess/shims";
import { isUnable } from "@floorworthy/engine/quantities";
import { installerSheet } from "@floorworthy/papers";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperAndDay, withPaper } from "../paper-option.ts";
import { setOutLines } from "../print/set-out.ts";
import { teller, writeSheet } from "../write-sheet.ts";
import { writeTemplates } from "../write-template.ts";

interface SetOutOptions {
  readonly json?: boolean;
  readonly workings?: boolean;
  readonly out?: string;
  readonly paper: string;
  readonly date?: string;
}

export const setOutCommand = (program: Command): void => {
  withPaper(
    jobCommand(program, "setout", "column centres and every hole from two walls, the hole in depth, shims and torque")
      .option("--json", "print it as JSON")
      .option("--workings", "unfold the numbers of the hole")
      .option("--out <dir>", "folder for the installer's sheet and the full-size template of the base plates"),
  ).action(
    withJob(async (job, { json, workings, out, ...asked }: SetOutOptions, path): Promise<ExitCode> => {
      const on = paperAndDay(asked);
      if (!on) return 2;
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
        if (!json) console.log("");
        const say = teller(json);
        await writeSheet(
          installerSheet(job, assessment, on),
          {
            out,
            jobFile: path,
            name: "installer",
            title: `Installer's sheet: ${job.title}`,
            date: on.date,
          },
          say,
        );
        for (const file of await writeTemplates(job, assessment, { out, jobFile: path, ...on })) say(file);
      }
      return made.drilling === "may-drill" ? 0 : 3;
    }),
  );
};
