import { adviseHit, metWords, readHit } from "@floorworthy/assess/hit";
import type { Command } from "commander";
import { jobCommand, withJob } from "../on-job.ts";
import { hitLines } from "../print/hit.ts";

interface HitOptions {
  readonly hole: string;
  readonly depth: string;
  readonly met: string;
  readonly owner?: string;
  readonly json?: boolean;
  readonly workings?: boolean;
}

export const hitCommand = (program: Command): void => {
  jobCommand(program, "hit", "the drill was stopped: what to do, and what never")
    .requiredOption("--hole <name>", "which hole, named as on the set-out, such as R4")
    .requiredOption("--depth <length>", "how deep it came, such as 2 1/2 in")
    .requiredOption("--met <what>", `one of: ${Object.keys(metWords).join(", ")}`)
    .option("--owner <answer>", "the slab's owner on cutting one bar: agrees or refuses")
    .option("--json", "print it as JSON")
    .option("--workings", "unfold the ratios")
    .action(
      withJob((job, { json, workings, ...typed }: HitOptions) => {
        const hit = readHit(job, typed);
        if (!("hole" in hit)) {
          for (const { about, message } of hit) console.error(`--${about}  ${message}`);
          return 2;
        }
        const advice = adviseHit(job, hit);
        console.log(
          json ? JSON.stringify(advice, null, 2) : hitLines(advice, workings ? "unfolded" : "folded").join("\n"),
        );
        return advice.verdict === "accept-if" ? 0 : 3;
      }),
    );
};
