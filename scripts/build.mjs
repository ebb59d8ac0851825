// Bundles the command line and the server with esbuild, and the page with Vite, into dist/.
import { existsSync } from "node:fs";
import { build } from "esbuild";

const node = {
  bundle: true,
  platform: "node",
  target: "node20",
  format: "esm",
  sourcemap: true,
  logLevel: "warning",
  packages: "external",
  alias: Object.fromEntries([]),
  plugins: [
    {
      name: "ours-inside",
      setup(plugin) {
        // our own packages are bundled; everything from the registry stays outside
        plugin.onResolve({ filter: /^@floorworthy\// }, ({ path, resolveDir, pluginData }) =>
          pluginData === "ours" ? undefined : plugin.resolve(path, { resolveDir, kind: "import-statement", pluginData: "ours" }).then((found) => ({ path: found.path, external: false })),
        );
      },
    },
  ],
};

for (const [entry, outfile] of [
  ["apps/cli/src/main.ts", "dist/floorworthy.mjs"],
  ["apps/server/src/main.ts", "dist/server.mjs"],
]) {
  if (existsSync(entry)) await build({ ...node, entryPoints: [entry], outfile });
}

if (existsSync("apps/web/index.html")) {
  const vite = await import("vite");
  await vite.build({ root: "apps/web", logLevel: "warn", build: { outDir: "../../dist/web", emptyOutDir: true } });
}
