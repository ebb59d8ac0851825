import { type Catalogue, judgeLiftsSteps, liftsOf } from "@floorworthy/assess/catalogue";
import { readQuantity } from "@floorworthy/engine/quantities";
import type { Job, Lift } from "@floorworthy/job";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { catalogueLines } from "../print/catalogue.ts";
import { readCatalogue } from "../read-catalogue.ts";

interface LiftsOptions {
  readonly catalogue?: string;
  readonly load?: string;
  readonly json?: boolean;
}

export const liftsCommand = (program: Command): void => {
  jobCommand(program, "lifts", "which lift for this floor: every lift of the job and of a folder of lift sheets")
    .option("--catalogue <dir>", "folder of lift sheets (*.yaml)")
    .option("--load <weight>", "what is meant to be lifted, such as 3500 lb: which lifts may carry it")
    .option("--json", "print everything as JSON")
    .action(
      withJob(async (job, { catalogue, load, json }: LiftsOptions): Promise<ExitCode> => {
        const weight = load === undefined ? undefined : weightOf(load);
        if (weight === "not-a-weight") {
          console.error(`--load ${load}: write a weight with its unit, such as 3500 lb or 1600 kg.`);
          return 2;
        }
        const more = catalogue === undefined ? [] : await readCatalogue(catalogue);
        if (more === undefined) return 2;
        const found = await judged(job, liftsOf(job, more));
        console.log(json ? JSON.stringify(found, null, 2) : catalogueLines(job, found, weight).join("\n"));
        return found.findings.some(({ standing }) => standing === "may-stand" || standing === "after-move") ? 0 : 3;
      }),
    );
};

const weightOf = (text: string): number | "not-a-weight" => {
  const read = readQuantity(text, "force");
  return read.ok && read.value > 0 ? read.value : "not-a-weight";
};

const judged = async (job: Job, lifts: readonly Lift[]): Promise<Catalogue> => {
  const steps = judgeLiftsSteps(job, lifts);
  let step = steps.next();
  while (!step.done) {
    if (lifts.length > 3) console.error(`${step.value.done} of ${step.value.of} lifts`);
    await new Promise((resolve) => setImmediate(resolve));
    step = steps.next("go-on");
  }
  return step.value;
};
