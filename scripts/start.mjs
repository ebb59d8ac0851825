// `npm start`: build what has changed, then serve the page on this machine only.
import { spawnSync } from "node:child_process";

const { status } = spawnSync(process.execPath, ["scripts/build.mjs"], { stdio: "inherit" });
if (status !== 0) process.exit(status ?? 1);
await import("../dist/server.mjs");
