import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { summary } from "../../apps/web/src/work/summary.ts";

const demo = (name: string): string => readFileSync(`examples/${name}.yaml`, "utf8");

/** What the list of jobs says is due; days from the demo's own dates. */
describe("what is due next", () => {
  test("a pour that is planned, and the question once its day is over", () => {
    const shop = demo("new-heated-shop");
    expect(summary(shop, "2025-10-20").due).toEqual({ on: "2025-11-12", what: "pour planned" });
    expect(summary(shop, "2025-11-13").due).toEqual({ on: "2025-11-12", what: "pour planned: was it made?" });
    expect(summary(shop, "2027-01-01").due).toEqual({ on: "2025-11-12", what: "pour planned: was it made?" });
  });

  test("the drilling day while the answer is to wait", () => {
    const { outcome, due } = summary(demo("nine-cold-days"), "2025-02-14");
    expect(outcome).toBe("wait");
    expect(due?.what).toBe("drilling, not before");
    // never before the 28 days of the maker's page after the pour of 2025-02-04
    expect(due!.on >= "2025-03-04").toBe(true);
  });

  test("the round of the nuts, and the repair of what is out of service", () => {
    expect(summary(demo("floor-that-falls"), "2026-11-29").due?.what).toBe("round of the nuts, overdue");
    expect(summary(demo("four-years-of-rounds"), "2026-11-29").due).toEqual({
      on: "2026-11-29",
      what: "repair, before anything is lifted",
    });
  });

  test("nothing where nothing is", () => {
    expect(summary(demo("stamp-at-the-door"), "2026-11-29").due).toBeUndefined();
    expect(summary("floorworthy: 1\ntitle: [", "2026-11-29")).toMatchObject({ outcome: undefined, due: undefined });
  });
});
