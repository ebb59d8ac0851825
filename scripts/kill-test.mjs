// Kills the built server at random moments while it writes, and looks whether everything acknowledged is there.
//   node scripts/kill-test.mjs [--rounds 200] [--only sqlite|postgres] [--told]
import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
const args = ["tests/server/kill/main.ts", ...process.argv.slice(2)];
process.exit(spawnSync("node_modules/.bin/tsx", args, { stdio: "inherit" }).status ?? 1);
