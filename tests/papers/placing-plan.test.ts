import { readFileSync } from "node:fs";
import { assess } from "@floorworthy/assess";
import { marginMap, placeLift } from "@floorworthy/assess/place";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import { type Job, readJob } from "@floorworthy/job";
import { type Drawing, type Paper, placingPlan } from "@floorworthy/papers";
import { describe, expect, test } from "vitest";
import { dimensionsOf, groundOf, overlaps, strays, wordsOf } from "./reading-back.ts";

const load = (name: string): string => readFileSync(`examples/lifts/${name.replace(/^.*\//, "")}`, "utf8");
const jobOf = (name: string): Job => {
  const read = readJob(readFileSync(`examples/${name}.yaml`, "utf8"), { name, load });
  if (!read.ok) throw new Error(name);
  return read.job;
};
const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};
const sheetOf = (job: Job, paper: Paper = "letter", positions = 0): Drawing => {
  const map = positions > 0 ? able(marginMap(job, placeLift(job), { count: positions })) : undefined;
  const sheets = able(placingPlan(job, assess(job), { date: "2026-01-05", paper }, map));
  expect(sheets).toHaveLength(1);
  return sheets[0]!;
};

describe.each(["saw-cut-in-the-way", "records-in-hand", "new-heated-shop", "nine-cold-days"])("%s", (name) => {
  const job = jobOf(name);

  test.each(["letter", "a4"] as const)("one %s page, nothing outside the margin, no words over words", (paper) => {
    const sheet = sheetOf(job, paper);
    expect(strays(sheet, 7.9)).toEqual([]);
    expect(overlaps(sheet)).toEqual([]);
    expect(wordsOf(sheet).join(" ")).not.toMatch(/approved|certified|passed|NaN|undefined/i);
  });
});

test("the columns are set out where they are proposed, from the left and the back wall", () => {
  const job = jobOf("saw-cut-in-the-way");
  const { proposed } = placeLift(job);
  const figures = dimensionsOf(groundOf(sheetOf(job)));
  const { left } = proposed!.position;
  expect(figures.some((d) => d.axis === "y" && d.from.y === 0 && Math.abs(d.to.y - left.y) < 0.01)).toBe(true);
  expect(figures.some((d) => d.axis === "x" && d.from.x === 0 && Math.abs(d.to.x - left.x) < 0.01)).toBe(true);
});

test("with the map: every figure printed is the worst of some place, over 1 in bold", () => {
  const job = jobOf("saw-cut-in-the-way");
  const map = able(marginMap(job, placeLift(job), { count: 12 }));
  const sheet = able(placingPlan(job, assess(job), { date: "2026-01-05", paper: "letter" }, map))[0]!;
  expect(overlaps(sheet)).toEqual([]);
  expect(strays(sheet, 7.9)).toEqual([]);
  const cells = sheet.items.flatMap((item) =>
    item.kind === "text" && item.tag === "note-map" && /^\d\.\d\d$/.test(item.words) ? [item] : [],
  );
  expect(cells.length).toBeGreaterThan(4);
  const ratios = new Set(map.points.map(({ ratio }) => ratio!.toFixed(2)));
  for (const { words, lettering } of cells) {
    expect(ratios).toContain(words);
    if (Number(words) > 1.005) expect(lettering).toBe("bold");
    if (Number(words) < 0.995) expect(lettering).toBe("regular");
  }
});

test("no such sheet under a stop", () => {
  const job = jobOf("stamp-at-the-door");
  const answer = placingPlan(job, assess(job), { date: "2026-01-05", paper: "letter" });
  expect(isUnable(answer) && answer.reason).toContain("post-tensioned");
});
