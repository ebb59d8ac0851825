import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import type { Plugin } from "vite";

const WORKER = "service-worker.js";

/** Writes into the service worker which files the page is made of, and a version that changes with any of them. */
export const carriedFiles = (): Plugin => ({
  name: "carried-files",
  apply: "build",
  writeBundle: {
    order: "post",
    sequential: true,
    handler: ({ dir }) => {
      if (dir === undefined) return;
      const files = readdirSync(dir, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && entry.name !== WORKER && !entry.name.endsWith(".map"))
        .map((entry) => join(entry.parentPath, entry.name))
        .sort();
      const hash = createHash("sha256");
      for (const file of files) hash.update(relative(dir, file)).update(readFileSync(file));
      const addresses = files.map((file) => `/${relative(dir, file).split(sep).join("/")}`);
      const carried = ["/", ...addresses.filter((address) => address !== "/index.html")];
      const worker = readFileSync(join(dir, WORKER), "utf8")
        .replace("const FILES = [];", `const FILES = ${JSON.stringify(carried)};`)
        .replace('const VERSION = "none";', `const VERSION = "${hash.digest("hex").slice(0, 12)}";`);
      writeFileSync(join(dir, WORKER), worker);
    },
  },
});
