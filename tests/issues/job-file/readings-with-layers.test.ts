/** A reading's layer as people write it wrong: one clear message each, and nothing crashes. */
import { assess } from "@floorworthy/assess";
import { readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";
import { answerFor, floorJob } from "../../scenarios/standing-floor.ts";

const job = (reading: string): string => `
floorworthy: 1
title: Layers
lift: {name: Any, kind: two-post}
floor:
  readings:
    - ${reading}
`;

describe("layer of a reading", () => {
  test.each([
    ["{near: left, thickness: 5 in, layer: -1 in}", /layer/],
    ["{near: left, thickness: 5 in, layer: thin}", /layer/],
    ["{near: left, thickness: 5 in, layer: 2 psi}", /layer/],
  ])("%s", (reading, path) => {
    const read = readJob(job(reading), { name: "layers" });
    expect(read.ok).toBe(false);
    if (read.ok) return;
    expect(read.issues).toHaveLength(1);
    expect(read.issues[0]!.path).toMatch(path);
    expect(read.issues[0]!.message).not.toMatch(/undefined|NaN/);
  });
  test("unknown is legal", () => {
    const read = readJob(job("{near: left, thickness: 5 in, layer: unknown}"), { name: "layers" });
    expect(read.ok && read.job.floor.readings[0]!.layer).toMatchObject({ known: false });
  });
});

describe("facts that cannot be", () => {
  const clean = (answer: unknown): void => expect(JSON.stringify(answer)).not.toMatch(/NaN|undefined|Infinity/);
  test("a layer thicker than the reading shows no slab", () => {
    const answer = answerFor({
      readings: "[{near: left, thickness: 2 in, layer: 3 in}, {near: right, thickness: 7 in}]",
    });
    expect(answer.survey!.thickness.refused.join()).toMatch(/all topping or tile/);
    clean(answer);
  });
  test("a hole without a thickness, a core without a strength, a crack looked at without a width", () => {
    clean(answerFor({ readings: "[{near: left, thickness: unknown}, {near: right, thickness: 7 in}]" }));
    clean(answerFor({ strength: "{cores: [{diameter: 4 in}]}" }));
    clean(
      answerFor({
        cracks:
          '[{name: C, line: [["10 in", "10 in"], ["20 in", "10 in"]], seen: [{on: 2026-05-01}, {on: 2026-06-01, width: 0.02 in}]}]',
      }),
    );
  });
  test("no columns, no plate, no holes: distances say nothing and nothing crashes", () => {
    const whole = floorJob({ joints: "[{name: J1, y: 150 in}]" });
    clean(assess({ ...whole, position: undefined }));
    const bare = {
      ...whole.lift,
      base: { ...whole.lift.base, outline: undefined },
      anchors: { ...whole.lift.anchors, holes: [] },
    };
    const answer = assess({ ...whole, lift: bare });
    expect(answer.survey!.distances.every(({ anchor, plate }) => !anchor && !plate)).toBe(true);
    clean(answer);
  });
});
