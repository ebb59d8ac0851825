// Runs the bench scripts named on the command line, or all of them, and prints their ratios.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";

const wanted = process.argv.slice(2);
const all = readdirSync("bench").filter((file) => file.endsWith(".ts"));
for (const file of wanted.length > 0 ? wanted.map((name) => `${name}.ts`) : all) {
  console.log(`\n== bench/${file}`);
  spawnSync("node_modules/.bin/tsx", [`bench/${file}`], { stdio: "inherit" });
}
