// Reads the invented manuals and writes what was found, by family and by field, into docs/manuals.md.
import { spawnSync } from "node:child_process";

const { status } = spawnSync("node_modules/.bin/tsx", ["bench/manuals/report.ts", ...process.argv.slice(2)], {
  stdio: "inherit",
});
process.exit(status ?? 1);
