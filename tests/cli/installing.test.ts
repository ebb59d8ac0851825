import { spawnSync } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";

const run = (...args: string[]) => spawnSync(process.execPath, ["bin/floorworthy.mjs", ...args], { encoding: "utf8" });
const folder = mkdtempSync(join(tmpdir(), "floorworthy-"));

/** What a person reads; regression only. */
const golden = (text: string, name: string) => expect(text).toBe(readFileSync(`tests/golden/${name}.txt`, "utf8"));

test("setout: marks, hole, torque; sheet and templates are written", () => {
  const { status, stdout } = run("setout", "examples/records-in-hand.yaml", "--out", folder, "--date", "2026-05-05");
  expect(status).toBe(0);
  expect(stdout.split("\n")[2]).toBe("SET OUT AND DRILL");
  expect(stdout).toMatch(/L1 +96 3\/4 in +233 1\/2 in/);
  expect(stdout).not.toMatch(/NaN|undefined|\[object/);
  golden(stdout.slice(0, stdout.indexOf(`\n${folder}`)), "set-out-records-in-hand");
  const files = readdirSync(folder);
  for (const name of ["installer.pdf", "installer.svg", "template-left.dxf", "template-left.pdf", "template-right.svg"])
    expect(files).toContain(`records-in-hand-${name}`);
});

test("setout: marks only and refused end with 3 and say why; --json is data alone", () => {
  const waiting = run("setout", "examples/nine-cold-days.yaml", "--json", "--out", folder);
  expect(waiting.status).toBe(3);
  expect(JSON.parse(waiting.stdout).drilling).toBe("marks-only");
  const stamped = run("setout", "examples/stamp-at-the-door.yaml");
  expect(stamped.status).toBe(3);
  expect(stamped.stdout).toBe("");
  expect(stamped.stderr).toMatch(/Not set out\..*post-tension/);
});

test("hit: the ways on, or a stop, or all mistakes at once", () => {
  const bar = run(
    "hit",
    "examples/steel-in-the-way.yaml",
    "--hole",
    "R4",
    "--depth",
    "2 1/2 in",
    "--met",
    "bar",
    "--owner",
    "agrees",
  );
  expect(bar.status).toBe(0);
  expect(bar.stdout.split("\n")[2]).toBe("ACCEPT-IF");
  golden(bar.stdout.slice(0, bar.stdout.indexOf("\nThe hole")), "hit-steel-in-the-way");
  const tendon = run(
    "hit",
    "examples/steel-in-the-way.yaml",
    "--hole",
    "R4",
    "--depth",
    "2 in",
    "--met",
    "tendon",
    "--json",
  );
  expect(tendon.status).toBe(3);
  expect(JSON.parse(tendon.stdout)).toMatchObject({ verdict: "refuse", ways: [] });
  const wrong = run("hit", "examples/steel-in-the-way.yaml", "--hole", "R9", "--depth", "2.5", "--met", "rock");
  expect(wrong.status).toBe(2);
  expect(
    wrong.stderr
      .trim()
      .split("\n")
      .map((l) => l.split(" ")[0]),
  ).toEqual(["--hole", "--depth", "--met"]);
});

test("record: all for an accepted floor, only what stops work under a stop, and the names when one is wrong", () => {
  expect(run("record", "examples/floor-that-falls.yaml", "--all", "--out", folder).stdout.match(/\.pdf/g)).toHaveLength(
    5,
  );
  const stamped = run("record", "examples/stamp-at-the-door.yaml", "--all", "--out", folder);
  expect(stamped.status).toBe(0);
  expect(stamped.stdout).toMatch(/inspection\.pdf[\s\S]*out-of-service\.pdf/);
  expect(stamped.stdout).not.toMatch(/installation\.pdf|anchor-log|owner-card/);
  const wrong = run("record", "examples/floor-that-falls.yaml", "--name", "licence", "--out", folder);
  expect(wrong.status).toBe(2);
  expect(wrong.stderr).toMatch(/anchor-log, installation, owner-card, inspection, out-of-service/);
});
