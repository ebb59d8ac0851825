import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const run = (...args: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ["bin/floorworthy.mjs", ...args], {
    encoding: "utf8",
  });
  return { status, stdout, stderr };
};

const examples = readdirSync("examples").filter((file) => file.endsWith(".yaml"));
const folder = mkdtempSync(join(tmpdir(), "floorworthy-"));

/** The outcome each demo job is there to show. */
const demo: Record<string, { outcome: string; exit: number }> = {
  "records-in-hand.yaml": { outcome: "ACCEPT", exit: 0 },
  "steel-in-the-way.yaml": { outcome: "ACCEPT", exit: 0 },
  "floor-that-falls.yaml": { outcome: "ACCEPT", exit: 0 },
  "four-posts-on-four-inches.yaml": { outcome: "ACCEPT", exit: 0 },
  "rolling-columns-by-a-joint.yaml": { outcome: "ACCEPT-IF", exit: 0 },
  "old-floor-no-papers.yaml": { outcome: "HOLD", exit: 3 },
  "nobody-has-measured.yaml": { outcome: "HOLD", exit: 3 },
  "four-inches-that-are-not.yaml": { outcome: "POUR", exit: 3 },
  "four-years-of-rounds.yaml": { outcome: "OUT-OF-SERVICE", exit: 3 },
  "new-heated-shop.yaml": { outcome: "POUR", exit: 3 },
  "nine-cold-days.yaml": { outcome: "WAIT", exit: 3 },
  "saw-cut-in-the-way.yaml": { outcome: "SHIFT", exit: 3 },
  "stamp-at-the-door.yaml": { outcome: "REFUSE", exit: 3 },
  "store-room-below.yaml": { outcome: "REFUSE", exit: 3 },
};

describe("floorworthy check", () => {
  test("every demo job is expected here", () => expect(examples.toSorted()).toEqual(Object.keys(demo).toSorted()));

  test.each(examples)("%s: outcome first, then both answers", (file) => {
    const { status, stdout } = run("check", `examples/${file}`);
    expect(status).toBe(demo[file]!.exit);
    const lines = stdout.split("\n");
    expect(lines[2]).toBe(demo[file]!.outcome);
    expect(stdout.indexOf("THE MAKER'S PAGE decides")).toBeGreaterThan(0);
    expect(stdout.indexOf("THE MARGIN advises")).toBeGreaterThan(stdout.indexOf("THE MAKER'S PAGE decides"));
    expect(stdout).toContain("approves nothing");
    expect(stdout).not.toMatch(/NaN|undefined|\[object/);
  });

  test("--workings unfolds a ratio to its clause and inputs", () => {
    const { stdout } = run("check", "examples/records-in-hand.yaml", "--workings");
    expect(stdout).toContain("WORKINGS");
    expect(stdout).toMatch(/ACI 318-19 17\.6\.2/);
    expect(stdout).toMatch(/kc|Nb/);
  });

  test("--json is the whole assessment", () => {
    const { stdout } = run("check", "examples/saw-cut-in-the-way.yaml", "--json");
    const answer = JSON.parse(stdout);
    expect(answer.outcome).toBe("shift");
    expect(answer.page.lines.length).toBeGreaterThan(5);
  });

  test("a stop prints no figure", () => {
    const { stdout } = run("check", "examples/stamp-at-the-door.yaml");
    expect(stdout).toContain("false comfort");
    expect(stdout).not.toContain("ratio");
  });
});

describe("mistakes", () => {
  test("a missing file, a wrong option and a wrong command end with 2", () => {
    expect(run("check", join(folder, "nothing.yaml")).status).toBe(2);
    expect(run("check", "examples/records-in-hand.yaml", "--wrkings").status).toBe(2);
    expect(run("chek", "examples/records-in-hand.yaml").status).toBe(2);
  });

  test("all mistakes of a file at once, each with its line", () => {
    const file = join(folder, "broken.yaml");
    writeFileSync(
      file,
      readFileSync("examples/records-in-hand.yaml", "utf8")
        .replace(/rated: .*/, "rated: 10000")
        .replace(/ceiling: .*/, "ceiling: six"),
    );
    const { status, stderr } = run("validate", file);
    expect(status).toBe(2);
    expect(stderr).toMatch(/line \d+/);
  });
});

describe("floorworthy sheet", () => {
  test("writes a PDF of one page and an SVG", () => {
    const { status, stdout } = run("sheet", "examples/new-heated-shop.yaml", "--out", folder, "--date", "2026-11-01");
    expect(status).toBe(0);
    for (const path of stdout.trim().split("\n")) expect(existsSync(path)).toBe(true);
    expect(readFileSync(stdout.trim().split("\n")[0]!).subarray(0, 5).toString()).toBe("%PDF-");
  });

  test("refuses a pour sheet where the tool must stop", () => {
    const { status, stderr } = run("sheet", "examples/stamp-at-the-door.yaml", "--out", folder);
    expect(status).toBe(3);
    expect(stderr).toContain("No contractor sheet");
  });
});
