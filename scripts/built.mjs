// dist/ as it should be: built anew only where something it is built from has changed.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const stampFile = `${root}dist/.built-from`;

const filesIn = (folder) =>
  readdirSync(root + folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) => `${entry.parentPath}/${entry.name}`)
    .filter((path) => !path.includes("node_modules/"))
    .sort();

const stampOf = () => {
  const sources = [...["packages", "apps"].flatMap(filesIn), `${root}scripts/build.mjs`, `${root}package-lock.json`];
  const hash = createHash("sha256");
  for (const path of sources) hash.update(path.slice(root.length)).update(readFileSync(path));
  return hash.digest("hex");
};

/** Throws where the build fails. */
export const ensureBuilt = (say = () => undefined) => {
  const stamp = stampOf();
  const whole = ["dist/server.mjs", "dist/floorworthy.mjs", "dist/web/index.html"].every((file) =>
    existsSync(root + file),
  );
  if (whole && existsSync(stampFile) && readFileSync(stampFile, "utf8") === stamp) return;
  say("Building …");
  const { status } = spawnSync(process.execPath, ["scripts/build.mjs"], { cwd: root, stdio: "inherit" });
  if (status !== 0) throw new Error("The build failed.");
  writeFileSync(stampFile, stamp);
};

if (process.argv[1] === fileURLToPath(import.meta.url)) ensureBuilt(console.log);
