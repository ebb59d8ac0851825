import { readdirSync, readFileSync } from "node:fs";
import { assess } from "@floorworthy/assess";
import { isUnable } from "@floorworthy/engine/quantities";
import { readJob } from "@floorworthy/job";
import { sheets } from "@floorworthy/papers";
import { recordSheets } from "@floorworthy/papers/records";
import { describe, expect, test } from "vitest";
import { overlaps, strays } from "./reading-back.ts";

const folder = new URL("../../examples/", import.meta.url);
const demos = readdirSync(folder).filter((name) => name.endsWith(".yaml"));
const jobOf = (name: string) => {
  const read = readJob(readFileSync(new URL(name, folder), "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.job;
};

/** Every kind of lift and floor there is a demo of: nothing of any sheet leaves the paper, no words lie over words. */
describe.each(demos)("%s", (name) => {
  const job = jobOf(name);
  const assessment = assess(job);
  test.each(["letter", "a4"] as const)("%s", (paper) => {
    const faults = [...sheets, ...recordSheets].flatMap((sheet) => {
      const pages = sheet.draw(job, assessment, { date: "2026-11-29", paper });
      if (isUnable(pages)) return [];
      return pages.flatMap((page) => [...strays(page), ...overlaps(page)].map((fault) => `${sheet.name}: ${fault}`));
    });
    expect(faults).toEqual([]);
  });
});
