import { assess } from "@floorworthy/assess";
import { planJobJoints } from "@floorworthy/assess/joint-plan";
import { isUnable } from "@floorworthy/engine/quantities";
import { jointSheet } from "@floorworthy/papers";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperAndDay, withPaper } from "../paper-option.ts";
import { jointLines } from "../print/joints.ts";
import { teller, writeSheets } from "../write-sheet.ts";

interface JointOptions {
  readonly json?: boolean;
  readonly workings?: boolean;
  readonly out?: string;
  readonly paper: string;
  readonly date?: string;
}

export const jointsCommand = (program: Command): void => {
  withPaper(
    jobCommand(program, "joints", "where to cut the slab and why, and which wished line is refused")
      .option("--json", "print the layout as JSON")
      .option("--workings", "unfold spacing, depth and length of the cuts")
      .option("--out <dir>", "write the joint plan, PDF, SVG and DXF, to this folder"),
  ).action(
    withJob(async (job, { json, workings, out, ...asked }: JointOptions, path): Promise<ExitCode> => {
      const on = paperAndDay(asked);
      if (!on) return 2;
      const assessment = assess(job);
      const plan = planJobJoints(job, assessment);
      if (isUnable(plan)) {
        if (json) console.log(JSON.stringify(plan, null, 2));
        else console.error(`No joint plan: ${plan.reason}`);
        return 3;
      }
      console.log(
        json ? JSON.stringify(plan, null, 2) : jointLines(job, plan, workings ? "unfolded" : "folded").join("\n"),
      );
      if (out === undefined) return 0;
      const written = await writeSheets([jointSheet], job, assessment, { out, jobFile: path, ...on }, teller(json));
      return written === "some" ? 0 : 3;
    }),
  );
};
