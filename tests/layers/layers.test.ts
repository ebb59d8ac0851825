import { spawnSync } from "node:child_process";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";

const root = fileURLToPath(new URL("../..", import.meta.url));

const cruise = (cwd: string) =>
  spawnSync(
    process.execPath,
    [
      `${root}node_modules/dependency-cruiser/bin/dependency-cruise.mjs`,
      "--config",
      `${root}.dependency-cruiser.cjs`,
      "packages",
    ],
    { cwd, encoding: "utf8" },
  );

describe("the layers of ARCHITECTURE.md", () => {
  test("the code keeps them", () => {
    const { status, stdout } = cruise(root);
    expect(status, stdout).toBe(0);
  });

  test("the checker is awake: a planted offence is found under each of its rules", () => {
    const { status, stdout } = cruise(`${root}tests/layers/planted`);
    expect(status).not.toBe(0);
    for (const rule of [
      "engine-knows-no-job",
      "quantities-at-the-bottom",
      "no-io-in-the-middle",
      "not-to-unresolvable",
    ]) {
      expect(stdout).toContain(rule);
    }
  });
});
