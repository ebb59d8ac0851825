import { readdirSync, readFileSync } from "node:fs";
import { assess } from "@floorworthy/assess";
import { isUnable } from "@floorworthy/engine/quantities";
import { readJob } from "@floorworthy/job";
import { sheets } from "@floorworthy/papers";
import { recordSheets } from "@floorworthy/papers/records";
import { describe, expect, test } from "vitest";
import { overlaps, strays } from "./reading-back.ts";

const folder = new URL("../../examples/", import.meta.url);
const demo = (name: string): string => readFileSync(new URL(name, folder), "utf8");
const demos = readdirSync(folder).filter((name) => name.endsWith(".yaml"));
/** kinds of lift without a demo of their own */
const others: readonly [name: string, text: string][] = [
  ["one post", demo("records-in-hand.yaml").replace("kind: two-post", "kind: one-post")],
  ["scissor", demo("four-posts-on-four-inches.yaml").replace("kind: four-post", "kind: scissor")],
  [
    "four posts, loose",
    demo("four-posts-on-four-inches.yaml").replace("kind: four-post", "kind: four-post\n  fixing: loose"),
  ],
];
const jobOf = (text: string) => {
  const read = readJob(text);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.job;
};

/** Every kind of lift and floor there is a demo of: nothing of any sheet leaves the paper, no words lie over words. */
describe.each([...demos.map((name) => [name, demo(name)] as const), ...others])("%s", (_, text) => {
  const job = jobOf(text);
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
