import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const run = (...args: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ["bin/floorworthy.mjs", ...args], {
    encoding: "utf8",
  });
  return { status, stdout, stderr };
};
const folder = mkdtempSync(join(tmpdir(), "floorworthy-place-"));

describe("place", () => {
  test("says the move first, then what is in the way and where the columns come to stand", () => {
    const { status, stdout, stderr } = run("place", "examples/saw-cut-in-the-way.yaml");
    expect(status).toBe(0);
    expect(stderr).toBe("");
    expect(stdout).toMatch(/MOVE IT\nMove it 2\.5 in toward the door\. The smallest move is 2 in toward the door\./);
    expect(stdout).toContain("An anchor would be 4 in from cross saw cut (6 in asked by the maker).");
    expect(stdout).toMatch(/proposed +80 in +163 in +208 in +163 in/);
    expect(stdout).not.toMatch(/NaN|undefined|Infinity/);
  });

  test("writes the plan, the map beside it, and its progress on the error stream", () => {
    const out = join(folder, "plan");
    const args = ["--map", "--count", "4", "--out", out, "--date", "2026-01-05"];
    const { status, stdout, stderr } = run("place", "examples/saw-cut-in-the-way.yaml", ...args);
    expect(status).toBe(0);
    expect(stderr).toMatch(/margin at \d+ of \d+ places/);
    expect(stdout).toMatch(/proposed +144 in +163 in +\d\.\d\d +First crack/);
    expect(readdirSync(out)).toEqual(
      expect.arrayContaining(["saw-cut-in-the-way-placing.pdf", "saw-cut-in-the-way-placing.svg"]),
    );
    const svg = readFileSync(join(out, "saw-cut-in-the-way-placing.svg"), "utf8");
    expect(svg).toContain("Worst ratio of the margin");
    expect(svg).not.toMatch(/approved|certified/i);
  });

  test("gives all of it as JSON", () => {
    const { status, stdout } = run("place", "examples/records-in-hand.yaml", "--json");
    expect(status).toBe(0);
    const placing = JSON.parse(stdout);
    expect(placing).toMatchObject({ answer: "here", blockers: [] });
    expect(placing.ways[0].regions[0].area).toBeGreaterThan(1e6);
  });

  test("under a stop there is no place, no plan and no map", () => {
    const out = join(folder, "stopped");
    const { status, stdout, stderr } = run("place", "examples/stamp-at-the-door.yaml", "--map", "--out", out);
    expect(status).toBe(3);
    expect(stdout).toContain("STOPPED");
    expect(stdout).not.toContain("left x");
    expect(stderr).toContain("No margin map");
    expect(stderr).toContain("No placing sheet");
  });

  test("mistakes end with 2, one message each", () => {
    for (const args of [
      ["--count", "many"],
      ["--count", "0"],
      ["--paper", "a3"],
    ]) {
      const { status, stderr, stdout } = run("place", "examples/records-in-hand.yaml", ...args);
      expect(status).toBe(2);
      expect(stderr.trim().split("\n")).toHaveLength(1);
      expect(stdout).toBe("");
    }
  });
});

describe("lifts", () => {
  test("a stamped slab: only the lift without anchors, accepted if shown without drilling", () => {
    const { status, stdout } = run("lifts", "examples/stamp-at-the-door.yaml", "--catalogue", "examples/lifts");
    expect(status).toBe(0);
    expect(stdout).toContain("May stand: ");
    expect(stdout).toMatch(/Wainfell Mid 6 Portable +6,000 lb +not shown +not computed +accept-if/);
    expect(stdout).toMatch(/Wainfell 10 Arch +10,000 lb +not judged +not computed +refuse/);
    expect(stdout).toContain("full rated load");
  });

  test("a room below: none, and exit 3; a smaller load makes no lift smaller", () => {
    const { status, stdout } = run("lifts", "examples/store-room-below.yaml", "--load", "3500 lb");
    expect(status).toBe(3);
    expect(stdout).toContain("None of these lifts may stand");
    expect(stdout).toContain("Lifting only 3,500 lb does not make a bigger lift ask less of the floor");
  });

  test("mistakes: no such folder, an empty one, a broken sheet with its line, a load without a unit", () => {
    const empty = mkdtempSync(join(tmpdir(), "floorworthy-empty-"));
    const broken = mkdtempSync(join(tmpdir(), "floorworthy-broken-"));
    writeFileSync(join(broken, "a.yaml"), "floorworthy: 1\nlift:\n  name: A\n  kind: two-post\n  fixing: glued\n");
    const mistake = (...args: string[]): string => {
      const { status, stderr, stdout } = run("lifts", "examples/stamp-at-the-door.yaml", ...args);
      expect(status).toBe(2);
      expect(stdout).toBe("");
      return stderr;
    };
    expect(mistake("--catalogue", join(folder, "nowhere"))).toContain("no such folder");
    expect(mistake("--catalogue", empty)).toContain("no lift sheet");
    expect(mistake("--catalogue", broken)).toMatch(/a\.yaml: line 5 +lift\.fixing/);
    expect(mistake("--load", "3500")).toContain("write a weight with its unit");
  });
});
