// Fifty readers and ten editors at the built server, on each database; prints how long they waited.
//   node scripts/load-test.mjs [--seconds 120] [--readers 50] [--editors 10] [--only sqlite|postgres]
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
const args = ["tests/server/load.ts", ...process.argv.slice(2)];
process.exit(spawnSync("node_modules/.bin/tsx", args, { stdio: "inherit" }).status ?? 1);
