import { mkdir, readFile, writeFile } from "node:fs/promises";
import { assess } from "@floorworthy/assess";
import { cureClock, type LogReading } from "@floorworthy/assess/cure";
import { pourDay } from "@floorworthy/assess/pour-day";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { cureCard } from "@floorworthy/papers";
import { cureCalendar } from "@floorworthy/papers/calendar";
import type { Command } from "commander";
import { dayOf } from "../day-option.ts";
import { type ExitCode, jobCommand, withJob } from "../on-job.ts";
import { paperOf } from "../paper-option.ts";
import { cureLines } from "../print/cure.ts";
import { readTemperatures } from "../read-temperatures.ts";
import { type WeatherOptions, weatherFrom } from "../weather-option.ts";
import { fileStem, teller, writeSheets } from "../write-sheet.ts";

interface CureOptions extends WeatherOptions {
  readonly today?: string;
  readonly temperatures?: string;
  readonly workings?: boolean;
  readonly json?: boolean;
  readonly out?: string;
  readonly paper: string;
}

const MOST_SHOWN = 20;

/** The logger's readings, none where no file is named; undefined after the mistakes have been printed. */
const logOf = async (job: Job, path: string | undefined): Promise<readonly LogReading[] | undefined> => {
  if (path === undefined) return [];
  let text: string;
  try {
    text = await readFile(path, "utf8");
  } catch {
    console.error(`--temperatures ${path}: this file cannot be read.`);
    return undefined;
  }
  const read = readTemperatures(text, { poured: pouredOn(job) });
  if (!read.ok) {
    for (const mistake of read.mistakes) console.error(`${path}: ${mistake}`);
    return undefined;
  }
  for (const row of read.skipped.slice(0, MOST_SHOWN)) console.error(`${path}: ${row}`);
  if (read.skipped.length > MOST_SHOWN)
    console.error(`${path}: ${read.skipped.length - MOST_SHOWN} more rows were left out.`);
  return read.readings;
};

/** The clock itself knows which pour counts. */
const pouredOn = (job: Job): string | undefined => {
  const clock = cureClock(job, job.date ?? job.pour?.date ?? "2000-01-01", { detail: "word" });
  return isUnable(clock) ? job.pour?.date : clock.poured;
};

export const cureCommand = (program: Command): void => {
  jobCommand(
    program,
    "cure",
    "the day for drilling: the maker's days and the strength by temperature; pour day and curing",
  )
    .option("--today <date>", "the day to judge on, YYYY-MM-DD (the job's date unless given, else today)")
    .option("--temperatures <file>", "a logger's table as CSV: time and temperature of the concrete")
    .option("--air <temperature>", 'pour day: air in the shade, such as "85 F"')
    .option("--humidity <share>", "pour day: relative humidity, such as 45%")
    .option("--wind <speed>", 'pour day: wind just above the slab, such as "10 mph"')
    .option("--concrete <temperature>", 'pour day: concrete as placed, such as "80 F"')
    .option("--workings", "unfold every number")
    .option("--json", "print clock and pour day as JSON")
    .option(
      "--out <dir>",
      "write the cure and saw card, PDF and SVG, and the days as a calendar (.ics), to this folder",
    )
    .option("--paper <size>", "letter or a4", "letter")
    .action(
      withJob(async (job, options: CureOptions, path): Promise<ExitCode> => {
        const today = dayOf("--today", options.today ?? job.date);
        const paper = paperOf(options.paper);
        const weather = weatherFrom(options);
        if ("mistakes" in weather) for (const mistake of weather.mistakes) console.error(mistake);
        if (!today || !paper || "mistakes" in weather) return 2;
        const log = await logOf(job, options.temperatures);
        if (!log) return 2;
        const clock = cureClock(job, today, { log });
        if (isUnable(clock)) {
          if (options.json) console.log(JSON.stringify(clock, null, 2));
          else console.error(clock.reason);
          return 3;
        }
        const day = pourDay(job, weather, { log });
        console.log(
          options.json
            ? JSON.stringify({ ...clock, pourDay: day }, null, 2)
            : cureLines(clock, day, options.workings ? "unfolded" : "folded").join("\n"),
        );
        if (options.out === undefined) return 0;
        const card = cureCard(weather, log);
        const say = teller(options.json);
        const files = { out: options.out, jobFile: path, date: today, paper };
        const written = await writeSheets([card], job, assess(job), files, say);
        const days = cureCalendar(job, clock, day);
        if (days === undefined)
          console.error("No calendar: the day of the pour is not set (pour.date), or went by without a word.");
        else {
          await mkdir(options.out, { recursive: true });
          const file = `${fileStem({ out: options.out, jobFile: path, name: card.name })}.ics`;
          await writeFile(file, days);
          say(file);
        }
        return written === "some" ? 0 : 3;
      }),
    );
};
