import type { Command } from "commander";
import { jobCommand, withJob } from "../on-job.ts";

export const validateCommand = (program: Command): void => {
  jobCommand(program, "validate", "reads a job file and lists every mistake in it").action(
    withJob((job, _options: object, path) => {
      console.log(`${path}: ${job.title}. Read without a mistake.`);
      return 0;
    }),
  );
};
