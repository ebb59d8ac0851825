// The worker when the program runs from source, in tests: our own files are bundled first, so that the libraries load as they are.
import { mkdir, rename } from "node:fs/promises";
import { fileURLToPath, pathToFileURL } from "node:url";
import { threadId } from "node:worker_threads";
import { build } from "esbuild";

const cache = fileURLToPath(new URL("../../../../node_modules/.cache/floorworthy/", import.meta.url));
const outfile = `${cache}read-manual-${process.pid}-${threadId}.mjs`;
const ready = `${cache}read-manual.mjs`;
const oursInside = {
  name: "ours-inside",
  setup: (plugin) =>
    plugin.onResolve({ filter: /^[^./]/ }, ({ path, kind }) =>
      kind === "entry-point" || path.startsWith("@floorworthy/") ? undefined : { path, external: true },
    ),
};

await mkdir(cache, { recursive: true });
await build({
  entryPoints: [fileURLToPath(new URL("worker.ts", import.meta.url))],
  outfile,
  bundle: true,
  platform: "node",
  format: "esm",
  logLevel: "warning",
  plugins: [oursInside],
});
await rename(outfile, ready);
await import(pathToFileURL(ready).href);
