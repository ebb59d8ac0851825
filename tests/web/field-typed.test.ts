import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { withFraction } from "../../apps/web/src/field/fractions.ts";
import { headAndRest } from "../../apps/web/src/field/head-and-rest.ts";
import { madeId } from "../../apps/web/src/field/made-id.ts";
import { readTyped } from "../../apps/web/src/field/read-typed.ts";
import { sizeWithin } from "../../apps/web/src/field/shrink.ts";

const asked = (dimension: "moment" | "length" | "angle" | "temperature", unit: string) =>
  ({ key: "k", ask: "?", kind: "quantity", dimension, unit }) as Parameters<typeof readTyped>[1];
const torque = asked("moment", "lb-ft");
const depth = asked("length", "in");

describe("what is typed with a glove", () => {
  test.each([
    ["45", torque, "45 lb-ft", "45 lb-ft = 61.01 N·m"],
    ["100 N·m", torque, "100 N·m", "100 N·m = 73.76 lb-ft"],
    ["4 1/2", depth, "4 1/2 in", "4 1/2 in = 114.3 mm"],
    ["4.5", depth, "4.5 in", "4.5 in = 114.3 mm"],
    ["4,5", depth, "4.5 in", "4.5 in = 114.3 mm"],
    ["114 mm", depth, "114 mm", "114 mm = 4.488 in"],
    ["0", torque, "0 lb-ft", "0 lb-ft = 0 N·m"],
    ["60", asked("angle", "deg"), "60 deg", "60 deg"],
    ["-5", asked("temperature", "°C"), "-5 °C", "-5 °C = 23 °F"],
  ])("%s is read as %o", (typed, question, written, says) =>
    expect(readTyped(typed, question)).toEqual({ state: "read", written, says }),
  );

  test.each(["", "  ", "unknown", "?"])("%o leaves it open", (typed) =>
    expect(readTyped(typed, torque)).toEqual({ state: "open" }),
  );

  test.each([
    ["4 5x", torque],
    ["4 in", torque],
    ["-4", depth],
    ["1,234,5", depth],
  ])("%s is one mistake, said in words", (typed, question) => {
    const read = readTyped(typed, question);
    expect(read.state).toBe("mistake");
    expect(read.state === "mistake" && read.words).toMatch(/\.$/);
  });

  test("45 in of concrete is asked once more and kept as it stands", () =>
    expect(readTyped("45", { ...depth, usual: [25, 1000] } as typeof depth)).toMatchObject({
      written: "45 in",
      says: expect.stringContaining("Is it right?"),
    }));

  test("nothing typed breaks it", () =>
    fc.assert(
      fc.property(fc.string({ maxLength: 70 }), (typed) => {
        const read = readTyped(typed, torque);
        expect(JSON.stringify(read)).not.toMatch(/NaN|undefined|Infinity/);
      }),
    ));
});

test.each([
  ["L1: 0.02 in of movement over 1 round, as it should", "L1: 0.02 in of movement over 1 round, as it should", ""],
  ["L2 slips, by all signs: 0.09 in; it goes on: out", "L2 slips, by all signs.", "0.09 in; it goes on: out"],
  ["R4 is snapped.", "R4 is snapped.", ""],
])("%s has its head", (words, head, rest) => expect(headAndRest(words)).toEqual({ head, rest }));

describe("eighths tapped behind whole inches", () => {
  test.each([
    ["", "1/8", "1/8"],
    ["4", "1/2", "4 1/2"],
    ["4 1/2", "3/4", "4 3/4"],
    ["4 1/2", "1/2", "4"],
    ["1/2", "1/2", ""],
    ["4 in", "1/4", "4 1/4"],
    ["12", "7/8", "12 7/8"],
  ])("%o and %s make %o", (typed, fraction, made) => expect(withFraction(typed, fraction)).toBe(made));
});

test("a photograph keeps its proportions and never grows", () => {
  expect(sizeWithin({ width: 4000, height: 3000 }, 1600)).toEqual({ width: 1600, height: 1200 });
  expect(sizeWithin({ width: 3000, height: 4000 }, 1600)).toEqual({ width: 1200, height: 1600 });
  expect(sizeWithin({ width: 800, height: 600 }, 1600)).toEqual({ width: 800, height: 600 });
  expect(sizeWithin({ width: 9000, height: 1 }, 1600)).toEqual({ width: 1600, height: 1 });
});

test("ids are version 4 UUIDs and differ", () => {
  const ids = Array.from({ length: 200 }, madeId);
  for (const id of ids) expect(id).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
  expect(new Set(ids).size).toBe(200);
});
