import { readFileSync } from "node:fs";
import { assess } from "@floorworthy/assess";
import { readJob } from "@floorworthy/job";
import { setPlain } from "@floorworthy/job/editing";
import { expect, test } from "vitest";

const job = (text: string) => {
  const read = readJob(text);
  if (!read.ok) throw new Error(JSON.stringify(read.issues));
  return read.job;
};

test("a line of the page carries the line of the manual that asks it", () => {
  const picture = "a".repeat(64);
  const text = setPlain(readFileSync("examples/records-in-hand.yaml", "utf8"), "lift.asks.thickness", {
    value: "4 1/4 in",
    basis: "documented",
    document: "Wainfell manual",
    page: "8",
    line: "Concrete: 4-1/4 in. thick or greater",
    picture,
  });
  const line = assess(job(text)).page.lines.find(({ id }) => id === "thickness");
  expect(line?.manual).toEqual({
    document: "Wainfell manual",
    page: "8",
    line: "Concrete: 4-1/4 in. thick or greater",
    picture,
  });
});

test("only what is documented carries them", () => {
  const text = setPlain(readFileSync("examples/records-in-hand.yaml", "utf8"), "lift.asks.thickness", {
    value: "4 1/4 in",
    basis: "measured",
    line: "x",
  });
  const read = readJob(text);
  expect(read.ok).toBe(false);
  expect(!read.ok && read.issues.map(({ code }) => code)).toEqual(["basis-mismatch"]);
});
