/** Cracks over the years: straight lines through looks, and what they mean for the anchors near. */
import { watchCracks } from "@floorworthy/assess/crack-watch";
import { type Job, readJob } from "@floorworthy/job";
import fc from "fast-check";
// @ts-expect-error jstat ships no types
import jstatModule from "jstat";
import { describe, expect, test } from "vitest";

const { jStat } = jstatModule;

const jobWith = (seen: readonly string[], more = "", place = "[[-20 in, 100 in], [400 in, 100 in]]"): Job => {
  const read = readJob(`floorworthy: 1
title: t
date: 2026-01-01
lift:
  name: L
  kind: two-post
  base: { outline: { width: 18 in, depth: 18 in } }
  anchors: { holes: [[-7 in, -6 in], [-7 in, 6 in]], product: { effectiveEmbedment: 4 in } }
columns: { left: [100 in, 110 in], right: [220 in, 110 in] }
floor:
  cracks:
    - name: C1
      line: ${place}
      seen: [${seen.join(", ")}]
${more}
`);
  if (!read.ok) throw new Error(read.issues.map(({ message }) => message).join("\n"));
  return read.job;
};
const look = (on: string, width: number): string => `{ on: ${on}, width: ${width} mm }`;
const first = (job: Job) => watchCracks(job)[0]!;

describe("a crack beside the anchors", () => {
  test("distances by hand: L1 at y = 104 in is 4 in away, one hef; L2 at 116 in is 16 in, too far to name", () => {
    const { near } = first(jobWith([]));
    expect(near.map(({ anchor }) => anchor)).toEqual(["L1", "R1"]);
    expect(near[0]!.distance).toBeCloseTo(4 * 25.4, 6);
    expect(near[0]!.inHef).toBeCloseTo(1, 9);
  });
  test("0.02 to 0.03 in within three months grows; two equal looks a year apart do not", () => {
    const grown = first(jobWith([look("2025-07-01", 0.508), look("2025-10-01", 0.762)]));
    expect([grown.width, grown.answer]).toEqual(["growing", "out-of-service"]);
    const still = first(jobWith([look("2023-07-01", 0.5), look("2025-07-01", 0.5)]));
    expect([still.width, still.answer]).toEqual(["still", "quiet"]);
    expect(still.sentence).toContain("counts as an edge for L1 and R1");
  });
  test("0.05 mm more within a month cannot be told from the reading: look again", () => {
    const { width, answer, sentence } = first(jobWith([look("2025-07-01", 0.5), look("2025-08-01", 0.55)]));
    expect([width, answer]).toEqual(["undecided", "look"]);
    expect(sentence).toContain("same season");
  });
  test("far from any anchor growth calls for a look only", () => {
    const far = first(
      jobWith([look("2025-01-01", 0.3), look("2025-12-01", 0.9)], "", "[[0 in, 300 in], [400 in, 300 in]]"),
    );
    expect([far.width, far.answer, far.near]).toEqual(["growing", "look", []]);
  });
  test("the cone ends at 1.5 hef (ACI 318-19 17.6.2.1): growth at 1.25 hef closes the lift, at 1.75 hef it calls for a look", () => {
    const at = (inches: number): string =>
      first(
        jobWith(
          [look("2025-01-01", 0.3), look("2025-12-01", 0.9)],
          "",
          `[[-20 in, ${inches} in], [400 in, ${inches} in]]`,
        ),
      ).answer;
    expect([at(104 - 5), at(104 - 7)]).toEqual(["out-of-service", "look"]);
  });
  test("growth is said at 95 % of one side: 1.41 deviations between two looks are not enough, 1.70 are", () => {
    const grown = (mm: number): string => first(jobWith([look("2025-01-01", 0.3), look("2025-12-01", 0.3 + mm)])).width;
    expect([grown(0.1), grown(0.12)]).toEqual(["undecided", "growing"]);
  });
  test("a step is for an engineer, a wide crack asks why", () => {
    const job = jobWith([look("2023-01-01", 2), look("2025-01-01", 2)], "      step: 2 mm");
    const { alarms } = first(job);
    expect(alarms.join(" ")).toMatch(/step of 0\.079 in.*licensed engineer.*wider than 0\.063 in/);
  });
  test("no look at all is said, and nothing is made of it", () => {
    expect(first(jobWith([]))).toMatchObject({ width: "not-looked", answer: "quiet", terms: [] });
  });
});

describe("the slope", () => {
  test("against jstat's straight line through the same looks", () =>
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 20, max: 300 }), { minLength: 2, maxLength: 7 }), (hundredths) => {
        const dates = hundredths.map((_, i) => `20${10 + i}-03-01`);
        const days = dates.map((date) => Date.parse(date) / 86_400_000);
        const widths = hundredths.map((n) => n / 100);
        const { terms } = first(jobWith(dates.map((date, i) => look(date, widths[i]!))));
        const [, slope] = jStat.models.ols(
          widths,
          days.map((day) => [1, day - days[0]!]),
        ).coef;
        expect(terms[0]!.value * 25.4).toBeCloseTo(slope * 365.25, 6);
      }),
      { numRuns: 40 },
    ));
  test("a larger last look never makes a crack quieter", () =>
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 1, max: 60 }), (more, extra) => {
        const rank = { quiet: 0, look: 1, "out-of-service": 2 };
        const at = (width: number) =>
          rank[first(jobWith([look("2024-01-01", 0.4), look("2025-01-01", 0.42), look("2026-01-01", width)])).answer];
        expect(at(0.42 + (more + extra) / 100)).toBeGreaterThanOrEqual(at(0.42 + more / 100));
      }),
      { numRuns: 40 },
    ));
});
