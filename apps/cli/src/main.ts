import { Command } from "commander";
import { check } from "./commands/check.ts";
import { sheet } from "./commands/sheet.ts";
import { validate } from "./commands/validate.ts";

/** 0 accepted (also with conditions) · 3 not accepted · 2 mistakes in the input · 1 a bug of ours */
const BUG = 1;
const INPUT = 2;

const program = new Command("floorworthy")
  .description("Judges the concrete floor under a vehicle lift: the maker's page, and the margin beside it.")
  .exitOverride((error) => process.exit(error.exitCode === 0 ? 0 : INPUT));

program
  .command("check")
  .argument("<job>", "job file, YAML or JSON")
  .description("both answers for one job")
  .option("--workings", "unfold every number of the margin")
  .option("--json", "print the whole assessment as JSON")
  .action(async (job, options) => {
    process.exitCode = await check(job, options);
  });

program
  .command("sheet")
  .argument("<job>", "job file, YAML or JSON")
  .description("the concrete contractor's sheet, one page, to scale, as PDF and SVG")
  .requiredOption("--out <dir>", "folder to write to")
  .option("--paper <size>", "letter or a4", "letter")
  .option("--date <date>", "date to print on it, YYYY-MM-DD (today unless given)")
  .action(async (job, options) => {
    process.exitCode = await sheet(job, options);
  });

program
  .command("validate")
  .argument("<job>", "job file, YAML or JSON")
  .description("reads a job file and lists every mistake in it")
  .action(async (job) => {
    process.exitCode = await validate(job);
  });

try {
  await program.parseAsync();
} catch (error) {
  console.error(
    `floorworthy: this is a bug, please report it.\n${error instanceof Error ? error.stack : String(error)}`,
  );
  process.exitCode = BUG;
}
