#!/usr/bin/env node
import { spawnSync } from "node:child_process";
// The command line. A fresh clone is made ready first; afterwards this only loads the bundle.
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
if (!existsSync(`${root}dist/floorworthy.mjs`)) {
  for (const script of ["scripts/ready.mjs", "scripts/build.mjs"]) {
    const { status } = spawnSync(process.execPath, [script], { cwd: root, stdio: ["ignore", "ignore", "inherit"] });
    if (status !== 0) process.exit(1);
  }
}
await import(`${root}dist/floorworthy.mjs`);
