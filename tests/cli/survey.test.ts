import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const run = (...args: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ["bin/floorworthy.mjs", ...args], {
    encoding: "utf8",
  });
  return { status, stdout, stderr };
};

const folder = mkdtempSync(join(tmpdir(), "floorworthy-survey-"));
const golden = join(import.meta.dirname, "../golden");

describe("floorworthy survey", () => {
  test("a bay nobody has measured: nine holes, the mark, the card (text: regression only)", () => {
    const { status, stdout } = run(
      ...["survey", "examples/nobody-has-measured.yaml", "--out", folder, "--date", "2025-10-01"],
    );
    expect(status).toBe(0);
    const [text, files] = stdout.split(join(folder, "nobody-has-measured-drill-card.pdf"));
    expect(files).toContain("drill-card.svg");
    expect(existsSync(join(folder, "nobody-has-measured-drill-card.pdf"))).toBe(true);
    expect(text!.split("\n")[2]).toMatch(/^9 holes, bit marked at 5 1\/2 in\./);
    expect(text).toBe(readFileSync(join(golden, "survey-nobody-has-measured.txt"), "utf8"));
  });

  test("under a stop: no place, no card, and what to do instead", () => {
    for (const file of ["stamp-at-the-door", "store-room-below"]) {
      const { status, stdout, stderr } = run("survey", `examples/${file}.yaml`, "--out", folder);
      expect(status).toBe(3);
      expect(stdout).toContain("No hole is drilled in this floor.");
      expect(stdout).toContain("Instead of drilling");
      expect(stdout).not.toMatch(/from left wall|Bit/);
      expect(stderr).toContain("No drill-card sheet");
      expect(existsSync(join(folder, `${file}-drill-card.pdf`))).toBe(false);
    }
  });

  test("--json is the whole plan, --workings unfolds the mark; a wrong paper is a mistake", () => {
    const plan = JSON.parse(run("survey", "examples/saw-cut-in-the-way.yaml", "--json").stdout);
    expect(plan.drilling).toBe("holes");
    expect(plan.holes).toHaveLength(1);
    expect(plan.answered).toHaveLength(8);
    const { stdout } = run("survey", "examples/saw-cut-in-the-way.yaml", "--workings");
    expect(stdout).toMatch(/max\(t_lift, t_anchor\) \+ a \+ s/);
    expect(run("survey", "examples/saw-cut-in-the-way.yaml", "--paper", "a3").status).toBe(2);
  });

  test("no place for the lift and no bay: says what to fill in", () => {
    const file = join(folder, "nowhere.yaml");
    writeFileSync(file, "floorworthy: 1\ntitle: nowhere\nlift: { name: Any, kind: two-post, manual: in-hand }\n");
    const { status, stdout } = run("survey", file);
    expect(status).toBe(3);
    expect(stdout).toContain("columns.left");
    expect(stdout).toContain("bay.outline");
  });
});

describe("floorworthy refer", () => {
  test("a stamped slab: the pack and its sheet, no word of comfort (text: regression only)", () => {
    const { status, stdout } = run(
      ...["refer", "examples/stamp-at-the-door.yaml", "--out", folder, "--date", "2025-10-01"],
    );
    expect(status).toBe(0);
    expect(existsSync(join(folder, "stamp-at-the-door-referral.pdf"))).toBe(true);
    const [text] = stdout.split(join(folder, "stamp-at-the-door-referral.pdf"));
    expect(text).toContain("Where do the tendons lie");
    expect(text).not.toMatch(/\b(ample|enough|meets|ratio)\b|NaN|undefined|\[object/);
    expect(text!.split("\nNot verified\n")[0]).toBe(readFileSync(join(golden, "refer-stamp-at-the-door.txt"), "utf8"));
  });

  test("with nothing known it still answers, and --json is the whole pack", () => {
    const file = join(folder, "bare.yaml");
    writeFileSync(file, "floorworthy: 1\ntitle: bare\nlift: { name: Any, kind: four-post }\n");
    const { status, stdout } = run("refer", file, "--json");
    expect(status).toBe(0);
    const pack = JSON.parse(stdout);
    expect(pack.parts).toHaveLength(15);
    expect(pack.loads.cases).toEqual([]);
    expect(pack.notVerified.length).toBeGreaterThan(5);
  });
});
