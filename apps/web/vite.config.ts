import react from "@vitejs/plugin-react";
import { defineConfig } from "vite";
import { carriedFiles } from "./carried-files.ts";

export default defineConfig({
  plugins: [react(), carriedFiles()],
  build: {
    outDir: "../../dist/web",
    emptyOutDir: true,
    target: "es2022",
    modulePreload: { polyfill: false },
    assetsInlineLimit: 0,
  },
  worker: { format: "es" },
});
