import { mkdir, writeFile } from "node:fs/promises";
import { assess } from "@floorworthy/assess";
import { type Upkeep, upkeepOf } from "@floorworthy/assess/upkeep";
import type { Job } from "@floorworthy/job";
import { torqueCardSheet, torqueTrendSheet } from "@floorworthy/papers";
import { roundsCalendar } from "@floorworthy/papers/calendar";
import { historyCsv } from "@floorworthy/papers/csv";
import type { Command } from "commander";
import { dayOf } from "../day-option.ts";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperOf } from "../paper-option.ts";
import { upkeepLines } from "../print/upkeep.ts";
import { fileStem, teller, writeSheets } from "../write-sheet.ts";

interface TorqueOptions {
  readonly today?: string;
  readonly workings?: boolean;
  readonly json?: boolean;
  readonly csv?: boolean;
  readonly plot?: boolean;
  readonly out?: string;
  readonly paper: string;
}

export const torqueCommand = (program: Command): void => {
  jobCommand(
    program,
    "torque",
    "the anchors over the years: sound, to be re-torqued, or out of service; the next round",
  )
    .option("--today <date>", "the day to judge on, YYYY-MM-DD (today unless given)")
    .option("--workings", "unfold torque, pull and movement")
    .option("--json", "print the whole answer as JSON")
    .option("--csv", "print every reading as CSV")
    .option("--plot", "write the chart of the years only, to the folder of --out (here unless given)")
    .option("--out <dir>", "write chart, card for the next round, readings as CSV and rounds as a calendar (.ics)")
    .option("--paper <size>", "letter or a4", "letter")
    .action(
      withJob(async (job, options: TorqueOptions, path): Promise<ExitCode> => {
        const today = dayOf("--today", options.today);
        const paper = paperOf(options.paper);
        if (!today || !paper) return 2;
        const upkeep = upkeepOf(job, today);
        console.log(printed(job, upkeep, options));
        const out = options.out ?? (options.plot ? "." : undefined);
        if (out !== undefined) {
          const sheets = options.plot ? [torqueTrendSheet] : [torqueTrendSheet, torqueCardSheet];
          const say = teller(options.json || options.csv);
          await writeSheets(sheets, job, assess(job), { out, jobFile: path, date: today, paper }, say);
          if (!options.plot) await writeFiles(job, upkeep, { out, path, say });
        }
        return upkeep.answer === "out-of-service" || upkeep.answer === "stopped" ? 3 : 0;
      }),
    );
};

const printed = (job: Job, upkeep: Upkeep, { json, csv, workings }: TorqueOptions): string => {
  if (json) return JSON.stringify(upkeep, null, 2);
  if (csv) return historyCsv(job, upkeep).trimEnd();
  return upkeepLines(upkeep, job.units, workings ? "unfolded" : "folded").join("\n");
};

const writeFiles = async (
  job: Job,
  upkeep: Upkeep,
  { out, path, say }: { readonly out: string; readonly path: string; readonly say: (words: string) => void },
): Promise<void> => {
  await mkdir(out, { recursive: true });
  const stem = (name: string) => fileStem({ out, jobFile: path, name });
  await writeFile(`${stem("rounds")}.csv`, historyCsv(job, upkeep));
  say(`${stem("rounds")}.csv`);
  const days = roundsCalendar(job, upkeep, upkeep.today);
  if (days === undefined)
    return console.error(
      "No calendar of rounds: no day can be named while nothing may be lifted or nobody knows when it was set.",
    );
  await writeFile(`${stem("rounds")}.ics`, days);
  say(`${stem("rounds")}.ics`);
};
