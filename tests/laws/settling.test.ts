/** The cheapest set that settles an outcome: against every set tried by hand on invented judges, and on whole jobs. */
import { assess, type Outcome } from "@floorworthy/assess";
import { type Question, settlingSet } from "@floorworthy/assess/missing";
import { createGenerator } from "@floorworthy/engine/numerics";
import type { Job } from "@floorworthy/job";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { floorJob } from "../scenarios/standing-floor.ts";

const blank = floorJob();
/** Answers are written into the title, a letter each, so that an invented judge can read them. */
const question = (i: number, costClass: Question["costClass"]): Question => ({
  id: `q${i}`,
  what: `fact ${i}`,
  how: "",
  cost: "",
  costClass,
  risk: "none",
  open: () => true,
  worst: (job: Job) => ({ ...job, title: `${job.title}${i}` }),
  best: (job: Job) => job,
});
const dollars = { free: 0, small: 100, test: 1000, engineer: 3000 };

test("200 invented judges: no set that settles costs less, nor the same with fewer facts", () =>
  fc.assert(
    fc.property(
      fc.array(fc.constantFrom("free", "small", "test", "engineer"), { minLength: 1, maxLength: 5 }),
      fc.array(fc.uniqueArray(fc.integer({ min: 0, max: 4 }), { minLength: 1, maxLength: 3 }), { maxLength: 4 }),
      (classes, rules) => {
        const open = classes.map((c, i) => question(i, c as Question["costClass"]));
        // the outcome is bad where all the facts of some rule are at their worst: worse answers never help
        const judge = ({ title }: Job): Outcome =>
          rules.some((rule) => rule.every((i) => title.includes(String(i)))) ? "refuse" : "accept";
        const start = { ...blank, title: "" };
        const settles = (set: readonly Question[]): boolean =>
          judge(open.reduce((job, q) => (set.includes(q) ? job : q.worst(job)), start)) === judge(start);
        const price = (set: readonly Question[]): [number, number] => [
          set.reduce((sum, q) => sum + dollars[q.costClass], 0),
          set.length,
        ];
        const found = open.filter(({ id }) => settlingSet(start, open, judge)!.facts.includes(id));
        expect(settles(found)).toBe(true);
        for (let bits = 0; bits < 2 ** open.length; bits++) {
          const other = open.filter((_, i) => (bits >> i) & 1);
          if (!settles(other)) continue;
          const [a, b] = [price(found), price(other)];
          expect(a[0] < b[0] || (a[0] === b[0] && a[1] <= b[1])).toBe(true);
        }
      },
    ),
    { numRuns: 200 },
  ));

const forgettable: Readonly<Record<string, string>> = {
  "post-tension": "postTension",
  heat: "heat",
  utilities: "utilities",
  strength: "strength",
  thickness: "readings",
};

describe("on floors with some facts forgotten, the set known well leaves nothing that turns the outcome", () => {
  const next = createGenerator(12);
  const jobs = Array.from({ length: 8 }, () =>
    Object.fromEntries(
      Object.values(forgettable)
        .filter(() => next() < 0.5)
        .map((key) => [key, ""]),
    ),
  );
  test.each(jobs)("%o", (floor) => {
    const { missing, settling } = assess(floorJob(floor));
    const ids = missing.map(({ id }) => id);
    if (!settling) return expect(ids).toEqual([]);
    expect(ids).toEqual(expect.arrayContaining([...settling.facts]));
    const known = Object.fromEntries(
      Object.entries(floor).filter(([key]) => !settling.facts.some((id) => forgettable[id] === key)),
    );
    for (const fact of assess(floorJob(known)).missing) expect(fact.worst, fact.id).toBe(fact.best);
  });
});
