/** Lifts that are not two columns with anchors: posts with names of their own, and columns on feet without any anchor. */
import { readFileSync } from "node:fs";
import { asOneBase, assess, columnsOf } from "@floorworthy/assess";
import { setOut } from "@floorworthy/assess/setout";
import { planSurvey } from "@floorworthy/assess/survey";
import { upkeepOf } from "@floorworthy/assess/upkeep";
import { isUnable } from "@floorworthy/engine/quantities";
import { readJob } from "@floorworthy/job";
import { type Sheet, sheets } from "@floorworthy/papers";
import { recordSheets } from "@floorworthy/papers/records";
import { describe, expect, test } from "vitest";
import { wordsOf } from "./reading-back.ts";

const jobOf = (name: string) => {
  const read = readJob(readFileSync(`examples/${name}.yaml`, "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.job;
};
const sheetOf = (name: string): Sheet => [...sheets, ...recordSheets].find((sheet) => sheet.name === name)!;
const posts = jobOf("four-posts-on-four-inches");
const rolling = jobOf("rolling-columns-by-a-joint");
const print = (job: typeof posts, name: string) => {
  const pages = sheetOf(name).draw(job, assess(job), { date: "2026-11-29", paper: "letter" });
  return isUnable(pages) ? pages.reason : pages.flatMap(wordsOf);
};

describe("four posts", () => {
  const { layout } = assess(posts);
  const ids = layout.bases.flatMap(({ anchors }) => anchors.map(({ id }) => id));

  test("every anchor is watched under its own name, and no other", () => {
    expect(ids).toHaveLength(16);
    expect(upkeepOf(posts, "2026-11-29").anchors.map(({ anchor }) => anchor)).toEqual(ids);
  });

  test("log, card and set-out use one short mark for each anchor", () => {
    const marks = ["LFP", "LRP", "RFP", "RRP"].flatMap((post) => [1, 2, 3, 4].map((hole) => `${post}${hole}`));
    for (const name of ["anchor-log", "torque-card", "installer"]) {
      const words = print(posts, name);
      for (const mark of marks) expect(words).toContain(mark);
    }
  });

  test("the posts are squared by their own diagonals: √(124² + 180²) in = 218.6 in", () => {
    const made = setOut(posts, assess(posts));
    if (isUnable(made)) throw new Error(made.reason);
    const [centres, holes] = made.square;
    expect(centres!.diagonals.map(({ length }) => length.value)).toEqual([
      expect.closeTo(Math.hypot(124, 180), 1),
      expect.closeTo(Math.hypot(124, 180), 1),
    ]);
    expect(centres!.apart).toBeLessThan(0.01);
    expect(holes!.apart).toBeLessThan(0.01);
  });
});

test("columns with arms are told to be anchored, whatever the file says of their fixing", () => {
  const two = jobOf("records-in-hand");
  for (const kind of ["two-post", "one-post"] as const) {
    const { conditions, cautions } = assess({
      ...two,
      lift: { ...two.lift, kind, fixing: { known: true, value: "loose", basis: { kind: "stated" } } },
    });
    expect(cautions.join()).toMatch(/unstable until anchored.*Never load a lift with an anchor missing/);
    expect(conditions.join()).toMatch(/Every anchor drilled to depth/);
  }
});

describe("columns on feet, without anchors", () => {
  test("the feet of a column are one: four holes round it, not four round each foot", () => {
    const { bases } = assess(rolling).layout;
    const columns = columnsOf(bases, rolling.lift);
    expect([bases.length, columns.length]).toEqual([16, 4]);
    for (const column of columns) {
      const one = asOneBase(column);
      expect(one.side).toBe(`${column.name} column`);
      for (const { centre } of column.bases) {
        expect(Math.abs(centre.x - one.centre.x)).toBeLessThanOrEqual(17.001 * 25.4);
        expect(Math.abs(centre.y - one.centre.y)).toBeLessThanOrEqual(13.001 * 25.4);
      }
    }
    const plan = planSurvey(rolling, assess(rolling));
    if (isUnable(plan)) throw new Error(plan.reason);
    expect(plan.holes).toHaveLength(17);
  });

  test("nothing speaks of anchors or nuts where there are none", () => {
    const { conditions, cautions } = assess(rolling);
    expect([...conditions, ...cautions].filter((words) => /anchor(?!ed)|\bnuts?\b|torque/i.test(words))).toEqual([]);
    for (const name of ["owner-card", "installation", "inspection", "contractor"]) {
      const words = print(rolling, name);
      expect(words).toBeInstanceOf(Array);
      expect((words as string[]).filter((each) => /anchor|\bnuts?\b|torque/i.test(each))).toEqual([]);
    }
    for (const name of ["anchor-log", "torque-card", "installer"])
      expect(print(rolling, name)).toMatch(/stands without anchors/);
    expect(upkeepOf(rolling, "2026-11-29").sentence).toMatch(/^No nuts to go round/);
  });

  test("each column has its name once on the plan, and the distance of its nearest foot", () => {
    const words = print(rolling, "contractor") as string[];
    for (const column of ["left front", "left rear", "right front", "right rear"])
      expect(words.filter((each) => each === `${column} column`)).toHaveLength(1);
    expect(words.filter((each) => / to joint$/.test(each))).toHaveLength(4);
  });
});
