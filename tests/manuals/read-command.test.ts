import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readLift } from "@floorworthy/job";
import { build as bundled, type Plugin } from "esbuild";
import { beforeAll, describe, expect, test } from "vitest";
import { developingFamilies, reportFamilies } from "./corpus/index.ts";

const folder = mkdtempSync(join(tmpdir(), "floorworthy-read-"));
/** The program as it is built: one file, which is its own worker. */
const bundle = "node_modules/.cache/floorworthy/read-command-test.mjs";
const run = (...args: string[]) => spawnSync(process.execPath, [bundle, "read", ...args], { encoding: "utf8" });

const oursInside: Plugin = {
  name: "ours-inside",
  setup: (plugin) =>
    plugin.onResolve({ filter: /^[^./]/ }, ({ path, kind }) =>
      kind === "entry-point" || path.startsWith("@floorworthy/") ? undefined : { path, external: true },
    ),
};

const build = async (name: string, seed: number): Promise<string> => {
  const family = [...developingFamilies, ...reportFamilies].find((f) => f.name === name)!;
  const file = join(folder, `${name.replace(/\W+/g, "-")}.pdf`);
  writeFileSync(file, (await family.build(seed, "inch-pound")).bytes);
  return file;
};

describe("floorworthy read", () => {
  let single: string;
  let several: string;
  beforeAll(async () => {
    await bundled({
      entryPoints: ["apps/cli/src/main.ts"],
      outfile: bundle,
      bundle: true,
      platform: "node",
      format: "esm",
      plugins: [oursInside],
    });
    single = await build("margin keys", 51);
    several = await build("turned page, models in rows", 51);
  });

  test("prints values with page, line and confidence, and keeps a sheet that can be read with its pictures", () => {
    const out = join(folder, "kept");
    const { status, stdout, stderr } = run(single, "--out", out);
    expect(stderr).toContain("pictures of its lines");
    expect(status).toBe(0);
    expect(stdout).toMatch(/the least thickness of the concrete\n +· page 2, (?:sure|likely): “/);
    expect(stdout).toContain("Still to be asked");
    const names = readdirSync(out);
    const sheet = names.find((name) => name.endsWith(".yaml"))!;
    const read = readLift(readFileSync(join(out, sheet), "utf8"));
    expect(read.ok && read.lift.asks.thickness.known).toBe(true);
    const picture = names.find((name) => name.includes("asks.thickness"))!;
    expect(readFileSync(join(out, picture)).subarray(1, 4).toString()).toBe("PNG");
  });

  test("a manual of several models asks which one", () => {
    const { status, stderr } = run(several);
    expect(status).toBe(2);
    expect(stderr).toMatch(/speaks of several models: .+, .+\. Say which one with --model\./);
  });

  test("a file that is no manual: one message, exit 2", () => {
    const file = join(folder, "not-a.pdf");
    writeFileSync(file, "hello");
    const { status, stderr } = run(file);
    expect([status, stderr.trim()]).toEqual([
      2,
      `${file}: This is not a PDF file. Give the manual as the maker published it, as PDF.`,
    ]);
    expect(existsSync(file)).toBe(true);
  });
});
