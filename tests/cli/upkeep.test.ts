import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const run = (...args: string[]) => {
  const { status, stdout, stderr } = spawnSync(process.execPath, ["bin/floorworthy.mjs", ...args], {
    encoding: "utf8",
  });
  return { status, stdout, stderr };
};
const folder = mkdtempSync(join(tmpdir(), "floorworthy-upkeep-"));
const job = "examples/four-years-of-rounds.yaml";

describe("floorworthy torque", () => {
  test("the answer first, then why, the trend of every anchor, the next round, the ways back; files beside", () => {
    const { status, stdout, stderr } = run("torque", job, "--today", "2026-05-11", "--out", folder);
    expect(status).toBe(3);
    expect(stdout.split("\n")[2]).toBe("OUT OF SERVICE");
    expect(stdout).toMatch(/L2 slips: 0\.094 in/);
    expect(stdout).toMatch(/ {2}L2 +20 +25 ! +60 ! +95 ! +140 ! +0\.094 in/);
    expect(stdout).toMatch(/ {2}R4 +15 +5 +- +0 +0/);
    for (const part of [
      "Next round: before anything is lifted",
      "Ways back into service",
      "What torque says",
      "approves",
    ])
      expect(stdout).toContain(part);
    expect(stdout).not.toMatch(/NaN|undefined|\[object/);
    expect(stderr).toContain("No card for a round while a stop stands");
    expect(readdirSync(folder).toSorted()).toEqual([
      "four-years-of-rounds-rounds.csv",
      "four-years-of-rounds-torque-trend.pdf",
      "four-years-of-rounds-torque-trend.svg",
    ]);
    expect(readFileSync(join(folder, "four-years-of-rounds-rounds.csv"), "utf8").split("\r\n")).toHaveLength(51);
  });
  test("--json is the whole answer, --csv the readings", () => {
    const answer = JSON.parse(run("torque", job, "--today", "2026-05-11", "--json").stdout);
    expect([answer.answer, answer.anchors.length, answer.cracks[0].width]).toEqual(["out-of-service", 10, "growing"]);
    expect(run("torque", job, "--csv").stdout.startsWith("date,anchor,")).toBe(true);
  });
  test("a day that is none is said", () => {
    const { status, stderr } = run("torque", job, "--today", "2026-02-30");
    expect([status, stderr.trim()]).toEqual([
      2,
      "--today 2026-02-30: this is not a day. Write year-month-day, such as 2026-11-25.",
    ]);
  });
});

describe("floorworthy vehicle", () => {
  test("out of service: no, and not one weight beside", () => {
    const { status, stdout } = run("vehicle", job, "--weight", "3000 lb", "--today", "2026-05-11");
    expect([status, stdout.split("\n")[2]]).toEqual([3, "NO"]);
    expect(stdout).not.toMatch(/kip-in|ratio|rated \d/);
  });
  test("a class of vehicles on a floor that holds: figures by height, arms, the side that governs", () => {
    const { stdout } = run(
      "vehicle",
      "examples/records-in-hand.yaml",
      "--preset",
      "pickup",
      "--offset",
      "6 in",
      "--today",
      "2026-05-11",
    );
    expect(stdout.split("\n")[2]).toBe("RE-TORQUE FIRST");
    for (const part of ["59 %", "67 kip-in", "left arm toward the door", "invented"]) expect(stdout).toContain(part);
    expect(stdout).not.toMatch(/NaN|undefined|\[object/);
  });
  test("every mistake in the options, each once", () => {
    const { status, stderr } = run(
      "vehicle",
      job,
      "--weight",
      "8200",
      "--offset",
      "3 kg",
      "--preset",
      "lorry",
      "--frame",
      "wood",
    );
    expect(status).toBe(2);
    expect(stderr.trim().split("\n")).toHaveLength(4);
  });
});
