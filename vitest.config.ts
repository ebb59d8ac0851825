import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    exclude: ["tests/browser/**", "**/node_modules/**"],
    setupFiles: ["tests/seed.ts"],
    testTimeout: 120_000,
    hookTimeout: 120_000,
  },
});
