import { readFileSync } from "node:fs";
import { readJob, setFact } from "@floorworthy/job";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const example = readFileSync(new URL("../../../examples/records-in-hand.yaml", import.meta.url), "utf8");
const HEAD = "floorworthy: 1 # the form\ntitle: t\nlift: { name: L, kind: two-post, rated: 9000 lb } # light\n";
const jobOf = (text: string) => {
  const reading = readJob(text);
  if (!reading.ok) throw new Error(`${text}\n${JSON.stringify(reading.issues, null, 1)}`);
  return reading.job;
};

describe("setting one fact", () => {
  test.each([
    ["lift.rated", "10 kip", HEAD.replace("9000 lb", "10 kip")],
    ["lift.rated", "10,000 lb", HEAD.replace("9000 lb", '"10,000 lb"')],
    ["title", "Kettleby: garage", HEAD.replace("title: t", 'title: "Kettleby: garage"')],
    ["lift.rated", "unknown", HEAD.replace("9000 lb", "unknown")],
  ])("%s to %s changes that value and nothing else", (path, value, expected) => {
    expect(setFact(HEAD, path, value)).toBe(expected);
  });

  test("a fact in a group keeps how it is known", () => {
    const text = `${HEAD}floor:\n  # seen twice\n  thickness: { value: 4 in, by: Nora, on: 2025-01-02 }\n`;
    expect(setFact(text, "floor.thickness", `4 1/2"`)).toBe(text.replace("4 in", '"4 1/2\\""'));
  });

  test("the range around an old value goes with it, remarks stay", () => {
    const text = `${HEAD}floor:\n  # seen twice\n  thickness: { value: 4 in, low: 3 in, high: 5 in, by: Nora }\n`;
    const after = setFact(text, "floor.thickness", "7 in");
    expect(jobOf(after).floor.thickness).toMatchObject({
      written: "7 in",
      basis: { kind: "measured", by: "Nora" },
    });
    expect(after).not.toContain("3 in");
    expect(after).toContain("# seen twice");
  });

  test("a fact that was not there is added, with the groups it stands in", () => {
    const after = setFact(HEAD, "floor.strength.specified", "3000 psi");
    expect(jobOf(after).floor.strength.specified).toMatchObject({ written: "3000 psi" });
    expect(after).toContain("# light");
  });

  test("an item of a list", () => {
    const after = setFact(example, "floor.readings[2].thickness", "5 1/16 in");
    expect(jobOf(after).floor.readings[2]!.thickness).toMatchObject({ written: "5 1/16 in" });
    expect(after.split("\n").filter((line, i) => line !== example.split("\n")[i]).length).toBe(1);
  });

  test("JSON stays JSON", () => {
    const json = JSON.stringify(
      { floorworthy: 1, title: "t", lift: { name: "L", kind: "two-post", rated: "9000 lb" } },
      null,
      2,
    );
    const after = setFact(setFact(json, "lift.rated", "4 t"), "floor.thickness", '4"');
    expect(JSON.parse(after)).toMatchObject({ lift: { rated: "4 t" }, floor: { thickness: '4"' } });
  });

  test.each(["", "floor..x", "floor.readings[99].thickness", "title.inner", "__proto__.x", "a".repeat(1e4)])(
    "a path to nowhere leaves the text as it was: %s",
    (path) => {
      const after = setFact(HEAD, path, "4 in");
      if (after !== HEAD) expect(readJob(after).ok).toBe(false);
      expect(({} as Record<string, unknown>).x).toBeUndefined();
    },
  );

  test("whatever is written is what is read", () => {
    const value = fc
      .string({ minLength: 1, maxLength: 40 })
      .filter((text) => text.trim() === text && !/[\p{C}\p{Z}]/u.test(text.replace(/ /g, "")));
    fc.assert(
      fc.property(value, fc.constantFrom("customer", "lift.edition", "pour.date"), (text, path) => {
        const after = setFact(HEAD, path, text);
        const reading = readJob(after);
        if (reading.ok && path !== "pour.date")
          expect(path === "customer" ? reading.job.customer : reading.job.lift.edition).toBe(text);
        if (!reading.ok) expect(reading.issues.map(({ code }) => code)).toEqual(["bad-date"]);
      }),
      { numRuns: 500 },
    );
  });
});
