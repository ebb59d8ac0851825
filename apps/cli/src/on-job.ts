import type { Job } from "@floorworthy/job";
import type { Command } from "commander";
import { readJobFile } from "./read-job-file.ts";

/** What a command came to: 0 done or accepted · 3 not accepted, or nothing to print · 2 mistakes in the input. */
export type ExitCode = 0 | 2 | 3;

/** A command whose first argument is a job file. */
export const jobCommand = (program: Command, name: string, description: string): Command =>
  program.command(name).argument("<job>", "job file, YAML or JSON").description(description);

/** Reads the job, then runs the work; after mistakes in the file they are printed and nothing runs. */
export const withJob =
  <Options>(work: (job: Job, options: Options, path: string) => ExitCode | Promise<ExitCode>) =>
  async (path: string, options: Options): Promise<void> => {
    const job = await readJobFile(path);
    process.exitCode = job ? await work(job, options, path) : 2;
  };
