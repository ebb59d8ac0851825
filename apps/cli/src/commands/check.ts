import { type Assessment, assess } from "@floorworthy/assess";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { answerLines } from "../print/answer.ts";

interface CheckOptions {
  readonly workings?: boolean;
  readonly json?: boolean;
}

export const checkCommand = (program: Command): void => {
  jobCommand(program, "check", "both answers for one job")
    .option("--workings", "unfold every number of the margin")
    .option("--json", "print the whole assessment as JSON")
    .action(
      withJob((job, { workings, json }: CheckOptions) => {
        const assessment = assess(job);
        console.log(
          json
            ? JSON.stringify(assessment, null, 2)
            : answerLines(assessment, workings ? "unfolded" : "folded").join("\n"),
        );
        return exitCode(assessment);
      }),
    );
};

const exitCode = ({ outcome }: Assessment): ExitCode => (outcome === "accept" || outcome === "accept-if" ? 0 : 3);
