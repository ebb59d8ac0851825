import { Command } from "commander";
import { commands } from "./commands/index.ts";

const BUG = 1;
const INPUT = 2;

const program = new Command("floorworthy")
  .description("Judges the concrete floor under a vehicle lift: the maker's page, and the margin beside it.")
  .exitOverride((error) => process.exit(error.exitCode === 0 ? 0 : INPUT));

// a reader that has seen enough (`| head`) closes the pipe: that is no fault
process.stdout.on("error", (error: NodeJS.ErrnoException) => process.exit(error.code === "EPIPE" ? 0 : BUG));

for (const declare of commands) declare(program);

try {
  await program.parseAsync();
} catch (error) {
  console.error(
    `floorworthy: this is a bug, please report it.\n${error instanceof Error ? error.stack : String(error)}`,
  );
  process.exitCode = BUG;
}
