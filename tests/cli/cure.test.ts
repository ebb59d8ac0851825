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
const folder = mkdtempSync(join(tmpdir(), "floorworthy-cure-"));
const job = "examples/nine-cold-days.yaml";

describe("floorworthy cure", () => {
  test("the day first, then how it is counted, what warmth buys, pour day; card and calendar beside", async () => {
    const { status, stdout, stderr } = run(
      "cure",
      job,
      "--air",
      "85 F",
      "--humidity",
      "45%",
      "--wind",
      "10 mph",
      "--concrete",
      "88 F",
      "--out",
      folder,
    );
    expect([status, stderr]).toEqual([0, ""]);
    expect(stdout.split("\n")[2]).toMatch(/^Drill not before 2025-03-10 \(day 34\): the strength governs/);
    expect(stdout).not.toMatch(/NaN|undefined|\[object|Infinity/);
    expect(readdirSync(folder).toSorted()).toEqual(
      ["ics", "pdf", "svg"].map((ending) => `nine-cold-days-cure.${ending}`),
    );
    expect(readFileSync(join(folder, "nine-cold-days-cure.ics"), "utf8")).toMatch(
      /BEGIN:VCALENDAR[\s\S]*cure-drilling@floorworthy/,
    );
    await expect(stdout.replaceAll(folder, "OUT")).toMatchFileSnapshot("../golden/cure-nine-cold-days.txt");
  });
  test("--json is the clock with pour day; --workings unfolds to the clause", () => {
    const answer = JSON.parse(run("cure", job, "--json").stdout);
    expect([
      answer.drilling.governs,
      answer.maker.date,
      answer.counts.length,
      answer.pourDay.curing.days.value,
    ]).toEqual(["strength", "2025-03-04", 3, 7]);
    const { stdout } = run("cure", job, "--workings");
    for (const part of ["Workings", "ASTM C1074", "ACI 209R-92 Eq. 2-1", "f'c  28-day strength ordered: 4,000 psi"])
      expect(stdout).toContain(part);
  });
  test("a logger's table moves the day; rows left out are said", () => {
    const log = join(folder, "log.csv");
    const rows = Array.from(
      { length: 30 },
      (_, i) => `2025-02-${String(4 + Math.floor(i / 2)).padStart(2, "0")} ${i % 2 ? 18 : 6}:00,68`,
    );
    writeFileSync(log, `time,temperature °F\n${rows.join("\n")}\n2025-02-19 06:00,error\n`);
    const { status, stdout, stderr } = run("cure", job, "--temperatures", log);
    expect(status).toBe(0);
    expect(stdout.split("\n")[2]).toMatch(/^Drill not before 2025-03-04 \(day 28\): the maker's 28 days govern/);
    expect(stderr).toMatch(/log\.csv: line 32: "error" is not a temperature; left out\./);
  });
  test("mistakes: each one message, nothing printed", () => {
    const { status, stdout, stderr } = run("cure", job, "--air", "85", "--humidity", "60", "--wind", "-3 mph");
    expect([status, stdout]).toEqual([2, ""]);
    expect(stderr.trim().split("\n")).toHaveLength(3);
    expect(run("cure", job, "--temperatures", "nowhere.csv")).toMatchObject({
      status: 2,
      stderr: "--temperatures nowhere.csv: this file cannot be read.\n",
    });
  });
  test("no day under a stop, none for an old floor", () => {
    expect(run("cure", "examples/stamp-at-the-door.yaml")).toMatchObject({ status: 3, stdout: "" });
    expect(run("cure", "examples/old-floor-no-papers.yaml")).toMatchObject({ status: 3, stdout: "" });
  });
});
