import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/browser/**", "**/node_modules/**"],
    globalSetup: ["tests/built.ts"],
    setupFiles: ["tests/seed.ts"],
    maxWorkers: "100%",
    testTimeout: 240_000,
    hookTimeout: 240_000,
  },
});
