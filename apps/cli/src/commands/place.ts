import { assess } from "@floorworthy/assess";
import { type MarginMap, marginMapSteps, type Placing, placeLift } from "@floorworthy/assess/place";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { placingPlan } from "@floorworthy/papers";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperAndDay, withPaper } from "../paper-option.ts";
import { placingLines } from "../print/placing.ts";
import { teller, writeSheet } from "../write-sheet.ts";

interface PlaceCommandOptions {
  readonly map?: boolean;
  readonly count: string;
  readonly json?: boolean;
  readonly out?: string;
  readonly paper: string;
  readonly date?: string;
}

const MOST = 2000;

export const placeCommand = (program: Command): void => {
  withPaper(
    jobCommand(program, "place", "where in the bay the lift may stand, and what is in the way")
      .option("--map", "the margin's worst ratio over the places where it may stand")
      .option("--count <positions>", "positions of the map", "200")
      .option("--json", "print everything as JSON")
      .option("--out <dir>", "write the plan as PDF and SVG to this folder"),
  ).action(
    withJob(async (job, options: PlaceCommandOptions, path): Promise<ExitCode> => {
      const { map, json, out } = options;
      const on = paperAndDay(options);
      const count = Number(options.count);
      if (!Number.isInteger(count) || count < 1 || count > MOST) {
        console.error(`--count ${options.count}: write a whole number from 1 to ${MOST}.`);
        return 2;
      }
      if (!on) return 2;
      const placing = placeLift(job);
      const margin = map ? await computed(job, placing, count) : undefined;
      if (json) console.log(JSON.stringify(margin ? { ...placing, map: margin } : placing, null, 2));
      else console.log(placingLines(job, placing, margin).join("\n"));
      if (out !== undefined) {
        const pages = placingPlan(job, assess(job), on, margin, placing);
        const title = `Where the lift may stand: ${job.title}`;
        const result = await writeSheet(
          pages,
          { out, jobFile: path, name: "placing", title, date: on.date },
          teller(json),
        );
        if (result === "refused") return 3;
      }
      return placing.answer === "here" || placing.answer === "move" ? 0 : 3;
    }),
  );
};

/** The map, with its progress on the error stream; interrupted, what was computed so far. */
const computed = async (job: Job, placing: Placing, count: number): Promise<MarginMap | undefined> => {
  let wish: "go-on" | "stop" = "go-on";
  const stop = (): void => {
    wish = "stop";
  };
  process.once("SIGINT", stop);
  const steps = marginMapSteps(job, placing, { count });
  let step = steps.next();
  let told = -1;
  while (!step.done) {
    const { done, of } = step.value;
    const tenth = Math.floor((10 * done) / of);
    if (tenth > told) console.error(`margin at ${done} of ${of} places`);
    told = Math.max(told, tenth);
    await new Promise((resolve) => setImmediate(resolve));
    step = steps.next(wish);
  }
  process.removeListener("SIGINT", stop);
  if (!isUnable(step.value)) return step.value;
  console.error(`No margin map: ${step.value.reason}`);
  return undefined;
};
