// One word runs every check that needs no browser: format and lint, types, layers, unused code.
import { spawnSync } from "node:child_process";

const steps = [
  ["format and lint", "node_modules/.bin/biome", ["check", "."]],
  ["types", process.execPath, ["scripts/types.mjs"]],
  ["layers", "node_modules/.bin/depcruise", ["--config", ".dependency-cruiser.cjs", "packages", "apps"]],
  ["unused code", "node_modules/.bin/knip", []],
];
const failed = [];
for (const [name, command, args] of steps) {
  console.log(`— ${name}`);
  if (spawnSync(command, args, { stdio: "inherit" }).status !== 0) failed.push(name);
}
if (failed.length > 0) console.error(`check failed: ${failed.join(", ")}`);
process.exit(failed.length > 0 ? 1 : 0);
