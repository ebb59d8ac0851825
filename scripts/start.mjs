// `npm start`: build what has changed, then serve the page on this machine only.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
const stampFile = "dist/.built-from";

const filesIn = (folder) =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath}/${entry.name}`)
    .filter((path) => !path.includes("node_modules/"))
    .sort();

const sources = [...["packages", "apps"].flatMap(filesIn), "scripts/build.mjs", "package-lock.json"];
const hash = createHash("sha256");
for (const path of sources) hash.update(path).update(readFileSync(path));
const stamp = hash.digest("hex");

const built = existsSync("dist/server.mjs") && existsSync("dist/web/index.html") && existsSync(stampFile);
if (!built || readFileSync(stampFile, "utf8") !== stamp) {
  console.log("Building …");
  const { status } = spawnSync(process.execPath, ["scripts/build.mjs"], { stdio: "inherit" });
  if (status !== 0) process.exit(status ?? 1);
  writeFileSync(stampFile, stamp);
}
process.env.FLOORWORTHY_DEMO ??= "fill";
await import("../dist/server.mjs");
