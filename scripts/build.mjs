// Bundles the command line and the server with esbuild, and the page with Vite, into dist/.
import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { build as buildPage } from "vite";

process.chdir(fileURLToPath(new URL("..", import.meta.url)));
process.env.NODE_ENV = "production"; // what is built is what people use, also when a test builds it

/** Our own packages are bundled; everything from the registry stays outside. */
const oursInside = {
  name: "ours-inside",
  setup: (plugin) =>
    plugin.onResolve({ filter: /^[^./]/ }, ({ path, kind }) =>
      kind === "entry-point" || path.startsWith("@floorworthy/") ? undefined : { path, external: true },
    ),
};

const programs = [
  ["apps/cli/src/main.ts", "dist/floorworthy.mjs"],
  ["apps/server/src/main.ts", "dist/server.mjs"],
  ["apps/server/src/papers/print-sheet.ts", "dist/print-sheet.mjs"],
  ["packages/manuals/src/node/worker.ts", "dist/read-manual.mjs"],
];
for (const [entry, outfile] of programs.filter(([entry]) => existsSync(entry))) {
  await build({
    entryPoints: [entry],
    outfile,
    bundle: true,
    platform: "node",
    target: "node20",
    format: "esm",
    sourcemap: true,
    logLevel: "warning",
    plugins: [oursInside],
  });
}

await buildPage({ root: "apps/web", logLevel: "warn" });
