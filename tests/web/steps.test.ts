import { describe, expect, test } from "vitest";
import { firstStep, stepOn, withTheirs } from "../../apps/web/src/job/steps.ts";

const job = (title: string, rated: string) => `title: ${title}\nlift:\n  rated: ${rated} # from the plate\n`;
const typed = (steps: ReturnType<typeof firstStep>, words: string, text: string) => stepOn(steps, words, () => text);

describe("steps back and forth", () => {
  test("typing in one field is one step, and what was undone goes when something new is written", () => {
    let steps = firstStep("");
    for (const text of ["a", "ab", "abc"]) steps = typed(steps, "type title", text);
    expect(steps).toEqual({ texts: ["", "abc"], words: ["", "type title"], at: 1 });
    expect(typed({ ...steps, at: 0 }, "", "z").texts).toEqual(["", "z"]);
    expect(typed(steps, "", "abc")).toBe(steps);
  });

  test("a step back never takes away what somebody else wrote meanwhile", () => {
    const base = job("Bay", "9000 lb");
    let steps = firstStep(base);
    steps = typed(steps, "a", job("Bay 1", "9000 lb"));
    steps = typed(steps, "b", job("Bay 2", "9000 lb"));
    const joined = withTheirs(steps, base, job("Bay", "10000 lb"), job("Bay 2", "10000 lb"));
    expect(joined.at).toBe(2);
    expect(joined.texts).toEqual([job("Bay", "10000 lb"), job("Bay 1", "10000 lb"), job("Bay 2", "10000 lb")]);
  });

  test("where both wrote the same place, a step back leaves theirs", () => {
    const steps = typed(firstStep(job("Bay", "9000 lb")), "a", job("Mine", "9000 lb"));
    const joined = withTheirs(steps, job("Bay", "9000 lb"), job("Theirs", "7000 lb"), job("Mine", "7000 lb"));
    expect(joined.texts[0]).toBe(job("Theirs", "7000 lb"));
  });
});
