// `npm start`: build what has changed, then serve the page on this machine only.
import { fileURLToPath } from "node:url";
import { ensureBuilt } from "./built.mjs";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
ensureBuilt(console.log);
process.env.FLOORWORTHY_DEMO ??= "fill";
await import("../dist/server.mjs");
