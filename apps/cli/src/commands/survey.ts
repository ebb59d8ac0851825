import { assess } from "@floorworthy/assess";
import { planSurvey } from "@floorworthy/assess/survey";
import { isUnable } from "@floorworthy/engine/quantities";
import { drillCard } from "@floorworthy/papers";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperAndDay, withPaper } from "../paper-option.ts";
import { surveyLines } from "../print/survey.ts";
import { teller, writeSheets } from "../write-sheet.ts";

interface SurveyOptions {
  readonly json?: boolean;
  readonly workings?: boolean;
  readonly out?: string;
  readonly paper: string;
  readonly date?: string;
}

export const surveyCommand = (program: Command): void => {
  withPaper(
    jobCommand(program, "survey", "where to drill for the slab's thickness, how deep, and when not to")
      .option("--workings", "unfold the bit's mark and every distance kept")
      .option("--json", "print the plan as JSON")
      .option("--out <dir>", "write the drill card, PDF and SVG, to this folder"),
  ).action(
    withJob(async (job, { json, workings, out, ...asked }: SurveyOptions, path): Promise<ExitCode> => {
      const on = paperAndDay(asked);
      if (!on) return 2;
      const assessment = assess(job);
      const plan = planSurvey(job, assessment);
      if (isUnable(plan)) {
        console.log(json ? JSON.stringify(plan, null, 2) : plan.reason);
        return 3;
      }
      console.log(
        json
          ? JSON.stringify(plan, null, 2)
          : surveyLines(plan, job.units, workings ? "unfolded" : "folded").join("\n"),
      );
      if (out !== undefined && (plan.drilling === "holes" || plan.drilling === "forbidden"))
        await writeSheets([drillCard], job, assessment, { out, jobFile: path, ...on }, teller(json));
      return plan.drilling === "forbidden" ? 3 : 0;
    }),
  );
};
