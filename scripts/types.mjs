// Type-checks every package under its own library and globals.
import { spawnSync } from "node:child_process";

const projects = [
  "packages/engine",
  "packages/job",
  "packages/assess",
  "packages/papers",
  "packages/manuals",
  "packages/store",
  "apps/cli",
  "apps/server",
  "apps/web",
  "tests",
];
let failed = false;
for (const project of projects) {
  const { status } = spawnSync(process.execPath, ["node_modules/tsc7/bin/tsc", "-p", project], { stdio: "inherit" });
  if (status !== 0) {
    console.error(`types: ${project} failed`);
    failed = true;
  }
}
process.exit(failed ? 1 : 0);
