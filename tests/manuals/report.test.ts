/**
 * How much of an invented manual is found, on layouts and wordings that were not looked at while the reader was made.
 * The truth is written beside each manual by its generator.
 */
import { beforeAll, describe, expect, test } from "vitest";
import { developingFamilies, type Measured, measure, reportFamilies, tablesOf } from "./corpus/index.ts";

const CRITICAL = ["asks.thickness", "asks.strength", "anchors.product.nominalEmbedment", "anchors.torque"];

describe("families kept for the report", () => {
  let measured: Measured;
  beforeAll(async () => {
    measured = await measure(reportFamilies, [21, 22]);
    console.log(tablesOf(measured));
  });

  test("95 of 100 values are found", () => {
    expect(measured.total.wanted).toBeGreaterThan(900);
    expect(measured.total.found / measured.total.wanted).toBeGreaterThanOrEqual(0.95);
  });

  test("98 of 100 values marked sure are true", () => {
    expect(measured.total.sure).toBeGreaterThan(500);
    expect(measured.total.sureRight / measured.total.sure).toBeGreaterThanOrEqual(0.98);
  });

  test("no thickness, strength, embedment or torque that is marked sure is wrong", () => {
    expect(
      measured.wrong
        .filter(({ field }) => CRITICAL.includes(field))
        .map((c) => `${c.family}: ${c.written} in “${c.evidence.line}”`),
    ).toEqual([]);
  });
});

test("families the reader was developed on: nearly everything, nothing wrong and sure", async () => {
  const { total, wrong } = await measure(developingFamilies, [3]);
  expect(total.found / total.wanted).toBeGreaterThanOrEqual(0.98);
  expect(wrong.map((c) => `${c.family}: ${c.field} ${c.written} in “${c.evidence.line}”`)).toEqual([]);
});
