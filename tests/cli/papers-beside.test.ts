import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const run = (...args: string[]) =>
  spawnSync(process.execPath, ["bin/floorworthy.mjs", ...args], { encoding: "utf8", env: { ...process.env } });
const fresh = () => join(mkdtempSync(join(tmpdir(), "floorworthy-beside-")), "papers");

/** Each command that answers in JSON and writes papers, with a demo that gets both. */
const both: readonly [command: string, job: string][] = [
  ["survey", "saw-cut-in-the-way"],
  ["place", "saw-cut-in-the-way"],
  ["refer", "stamp-at-the-door"],
  ["order", "new-heated-shop"],
  ["joints", "new-heated-shop"],
  ["cure", "new-heated-shop"],
  ["setout", "records-in-hand"],
  ["torque", "records-in-hand"],
];

describe("papers beside an answer", () => {
  test.each(both)(
    "%s --json --out: the answer stays pure JSON, the files are named on the error stream",
    (command, job) => {
      const out = fresh();
      const { stdout, stderr } = run(command, `examples/${job}.yaml`, "--json", "--out", out, "--paper", "a4");
      expect(() => JSON.parse(stdout)).not.toThrow();
      const files = readdirSync(out);
      expect(files.length).toBeGreaterThan(0);
      for (const file of files) expect(stderr).toContain(file);
    },
  );

  test.each([...both, ["sheet", "records-in-hand"], ["record", "records-in-hand"]])(
    "%s: a paper and a day that are none are both told, and nothing is written",
    (command, job) => {
      const out = fresh();
      const day = command === "cure" || command === "torque" ? "--today" : "--date";
      const { status, stdout, stderr } = run(
        command,
        `examples/${job}.yaml`,
        "--out",
        out,
        "--paper",
        "a9",
        day,
        "tomorrow",
      );
      expect(status).toBe(2);
      expect(stdout).toBe("");
      expect(stderr).toContain("--paper a9");
      expect(stderr).toContain(`${day} tomorrow`);
      expect(stderr.trim().split("\n")).toHaveLength(2);
      expect(existsSync(out)).toBe(false);
    },
  );
});
