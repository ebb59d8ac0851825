import { assess } from "@floorworthy/assess";
import { planSurvey } from "@floorworthy/assess/survey";
import { isUnable } from "@floorworthy/engine/quantities";
import { drillCard } from "@floorworthy/papers";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperOf } from "../paper-option.ts";
import { surveyLines } from "../print/survey.ts";
import { printedOn, writeSheet } from "../write-sheet.ts";

interface SurveyOptions {
  readonly json?: boolean;
  readonly workings?: boolean;
  readonly out?: string;
  readonly paper: string;
  readonly date?: string;
}

export const surveyCommand = (program: Command): void => {
  jobCommand(program, "survey", "where to drill for the slab's thickness, how deep, and when not to")
    .option("--workings", "unfold the bit's mark and every distance kept")
    .option("--json", "print the plan as JSON")
    .option("--out <dir>", "write the drill card, PDF and SVG, to this folder")
    .option("--paper <size>", "letter or a4", "letter")
    .option("--date <date>", "date to print on it, YYYY-MM-DD (today unless given)")
    .action(
      withJob(async (job, { json, workings, out, paper, date }: SurveyOptions, path): Promise<ExitCode> => {
        const size = paperOf(paper);
        if (!size) return 2;
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
        if (out !== undefined && (plan.drilling === "holes" || plan.drilling === "forbidden")) {
          const printed = printedOn(date);
          const { name, title } = drillCard;
          const pages = drillCard.draw(job, assessment, { date: printed, paper: size });
          await writeSheet(pages, { out, jobFile: path, name, title: `${title}: ${job.title}`, date: printed });
        }
        return plan.drilling === "forbidden" ? 3 : 0;
      }),
    );
};
