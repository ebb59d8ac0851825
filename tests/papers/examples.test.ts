import { readFileSync } from "node:fs";
import { join } from "node:path";
import { assess } from "@floorworthy/assess";
import { isUnable } from "@floorworthy/engine/quantities";
import { readJob } from "@floorworthy/job";
import { contractorSheet } from "@floorworthy/papers";
import { describe, expect, test } from "vitest";
import { overlaps, strays, wordsOf } from "./reading-back.ts";

const folder = join(import.meta.dirname, "../../examples");
const load = (name: string) => readFileSync(join(folder, name), "utf8");

const sheetOf = (file: string) => {
  const reading = readJob(load(file), { load });
  if (!reading.ok) throw new Error(reading.issues.map((issue) => issue.message).join("\n"));
  return contractorSheet(reading.job, assess(reading.job), { date: "2026-05-05", paper: "letter" });
};

describe("the demo jobs", () => {
  test("the new heated shop gets one clean page to pour from", () => {
    const sheet = sheetOf("new-heated-shop.yaml");
    if (isUnable(sheet)) throw new Error(sheet.reason);
    expect(sheet).toHaveLength(1);
    expect(strays(sheet[0]!, 7.9)).toEqual([]);
    expect(overlaps(sheet[0]!)).toEqual([]);
    expect(wordsOf(sheet[0]!).join(" ")).toMatch(/Order [\d.]+ cu yd/);
  });

  test("the stamped slab gets none, with the reason", () => {
    const sheet = sheetOf("stamp-at-the-door.yaml");
    expect(isUnable(sheet) && sheet.reason).toContain("post-tension");
  });
});
