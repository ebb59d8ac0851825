import { readFile, writeFile } from "node:fs/promises";
import { cheapestPad, checkHabit, depthRows, habitDesign, type PadAnswer } from "@floorworthy/assess/pad";
import { isUnable } from "@floorworthy/engine/quantities";
import { readJob, setZones } from "@floorworthy/job";
import type { Command } from "commander";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { type PadReport, padLines } from "../print/pad.ts";

interface PadOptions {
  readonly workings?: boolean;
  readonly json?: boolean;
  readonly write?: string;
}

export const padCommand = (program: Command): void => {
  jobCommand(program, "pad", "the thick concrete under the columns: the cheapest that holds, beside the rule of thumb")
    .option("--workings", "unfold every number")
    .option("--json", "print everything as JSON")
    .option("--write <file>", "write the job with the proposed pad in it")
    .action(
      withJob(async (job, { workings, json, write }: PadOptions, path): Promise<ExitCode> => {
        const cheapest = cheapestPad(job, { tell: progress(json ? "silent" : "shown") });
        if (isUnable(cheapest)) {
          console.error(`No pad is designed. ${cheapest.reason}`);
          return 3;
        }
        const habit = checkHabit(job);
        const depths = depthRows(job, habitDesign(job));
        const report: PadReport = { title: job.title, units: job.units, cheapest, habit, depths };
        console.log(json ? jsonOf(report) : padLines(report, workings ? "unfolded" : "folded").join("\n"));
        return write ? await writeJob(path, write, cheapest.best) : 0;
      }),
    );
};

/** A counter on the terminal's last line, where there is a terminal. */
const progress = (how: "silent" | "shown"): ((done: number, of: number) => void) => {
  if (how === "silent" || !process.stderr.isTTY) return () => undefined;
  return (done, of) =>
    process.stderr.write(done >= of ? "\r\u001b[K" : `\rtrying designs … ${Math.round((100 * done) / of)} %`);
};

/** The jobs inside would repeat the input; a ratio without limit is null. */
const jsonOf = (report: PadReport): string =>
  JSON.stringify(report, (key, value: unknown) => (key === "job" ? undefined : value), 2);

const writeJob = async (from: string, to: string, best: PadAnswer): Promise<ExitCode> => {
  const text = await readFile(from, "utf8");
  const written = setZones(text, best.job);
  const again = readJob(written, { load: () => undefined });
  const broken = again.ok ? [] : again.issues.filter(({ code }) => code !== "file-not-found");
  if (broken.length > 0) {
    console.error(`${to}: the design could not be written into this file. ${broken[0]!.message}`);
    return 2;
  }
  try {
    await writeFile(to, written);
  } catch {
    console.error(`${to}: it cannot be written there.`);
    return 2;
  }
  console.log(`\nWritten with the proposed pad: ${to}`);
  return 0;
};
