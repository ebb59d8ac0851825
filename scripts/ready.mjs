// Everything a fresh clone needs before `npm start` or `npm test`: packages, and with --browser a Chromium.
// A stamp of the lock file and the runtime says whether the installed packages are the right ones.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const root = fileURLToPath(new URL("..", import.meta.url));
const stampFile = `${root}node_modules/.floorworthy-ready`;

const run = (command, args, env = process.env) => {
  const { status, error } = spawnSync(command, args, { cwd: root, stdio: "inherit", env });
  if (error || status !== 0) {
    console.error(`floorworthy: ${command} ${args.join(" ")} failed${error ? `: ${error.message}` : ""}`);
    process.exit(status || 1);
  }
};

const stamp = createHash("sha256")
  .update(readFileSync(`${root}package-lock.json`))
  .update(`${process.versions.modules} ${process.platform} ${process.arch}`)
  .digest("hex");

export const installPackages = () => {
  if (existsSync(stampFile) && readFileSync(stampFile, "utf8") === stamp) return;
  console.log("Installing packages (once per change of package-lock.json) …");
  const env = Object.fromEntries(Object.entries(process.env).filter(([key]) => !key.startsWith("npm_config_")));
  const npm = process.env.npm_execpath;
  if (npm) run(process.execPath, [npm, "ci", "--no-audit", "--no-fund"], env);
  else run("npm", ["ci", "--no-audit", "--no-fund"], env);
  writeFileSync(stampFile, stamp);
};

const usualPlaces = [
  process.env.CHROMIUM_PATH,
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

export const findChromium = () => usualPlaces.find((place) => place && existsSync(place));

const debianRoot = () => existsSync("/usr/bin/apt-get") && process.getuid?.() === 0;

/** Debian packages the tests use; installed when we may, otherwise the tests say what they did without. */
const installTestTools = () => {
  const wanted = [];
  if (!findChromium()) wanted.push("chromium");
  if (!existsSync("/usr/bin/ccx")) wanted.push("calculix-ccx");
  if (!existsSync("/usr/bin/pdftoppm")) wanted.push("poppler-utils");
  if (!existsSync("/usr/lib/postgresql")) wanted.push("postgresql");
  if (wanted.length === 0) return;
  if (debianRoot()) {
    run("apt-get", ["update", "-qq"]);
    run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", ...wanted]);
  } else if (!findChromium()) {
    console.error("floorworthy: the browser tests need Chromium. Install it, or set CHROMIUM_PATH to one.");
    process.exit(1);
  }
};

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  installPackages();
  if (process.argv.includes("--browser")) installTestTools();
}
