import { readJob, setFact } from "@floorworthy/job";
import { writtenFacts } from "@floorworthy/job/listing";
import { describe, expect, test } from "vitest";

const text = `# kept
floorworthy: 1
title: A bay # and this
floor:
  thickness: {value: 4 in, basis: measured}   # spaced
  readings:
    - {near: left, thickness: 5 in}
    - thickness: "5 1/2\\""
    - thickness: {low: 3 in, high: 4 in}
  strength: unknown
`;
const writtenAt = (file: string, path: string) => writtenFacts(file).find((fact) => fact.path === path)?.written;

describe("facts as they stand in a file", () => {
  test.each([
    ["floor.thickness", "4 in"],
    ["floor.readings[0].thickness", "5 in"],
    ["floor.readings[1].thickness", '5 1/2"'],
    ["floor.readings[2].thickness.low", "3 in"],
    ["floor.strength", "unknown"],
  ])("%s is %s", (path, written) => expect(writtenAt(text, path)).toBe(written));

  test("what is set is what is listed, and the rest stays", () => {
    const edited = setFact(
      setFact(text, "floor.readings[0].thickness", "6 in"),
      "floor.strength.specified",
      "3000 psi",
    );
    expect(writtenAt(edited, "floor.readings[0].thickness")).toBe("6 in");
    expect(writtenAt(edited, "floor.strength.specified")).toBe("3000 psi");
    expect(edited).toContain("# and this");
  });

  test.each(["a: [", "", "- 1", "{".repeat(200)])("a file that cannot be read has none: %j", (file) =>
    expect(writtenFacts(file)).toEqual([]),
  );

  test("a mistake is reported by the reader at the path it is listed at", () => {
    const reading = readJob(setFact(text, "floor.readings[0].thickness", "six"));
    expect(reading.ok ? [] : reading.issues.map(({ path }) => path)).toContain("floor.readings[0].thickness");
  });
});
