import { readJob } from "@floorworthy/job";
import { describe, expect, test } from "vitest";

const start = "floorworthy: 1\ntitle: t\nlift: { name: n, kind: two-post }\ninstallation:\n";
const mistakes = (text: string): readonly string[] => {
  const read = readJob(start + text);
  return read.ok ? [] : read.issues.map(({ code, path, message }) => `${code} ${path}: ${message}`);
};

describe("the record of an installation", () => {
  test.each([
    [
      "  holes:\n    - { anchor: L1 }\n    - { anchor: l1 }\n",
      /^recorded-twice installation\.holes\[1\]\.anchor: .*L1 twice/,
    ],
    [
      "  levels:\n    - { base: left, corner: back-left, level: 1 mm }\n    - { base: left, corner: back-left, level: 2 mm }\n",
      /^recorded-twice .*back-left corner of the left base twice/,
    ],
    ["  levels: [{ base: left, corner: rear-left, level: 1 mm }]\n", /^wrong-word installation\.levels\[0\]\.corner/],
    ["  levels: [{ base: left, level: 1 mm }]\n", /corner/],
    [
      "  levels: [{ base: left, corner: back-left, level: 1 lb }]\n",
      /^wrong-dimension installation\.levels\[0\]\.level/,
    ],
    ["  holes: [{ anchor: L1, depth: -4 in }]\n", /installation\.holes\[0\]\.depth/],
    ["  holes: [{ anchor: L1, met: rock }]\n", /^wrong-word installation\.holes\[0\]\.met/],
    ["  holes: [{ anchor: L1, turned: -90 deg }]\n", /installation\.holes\[0\]\.turned/],
    ["  trial: twice\n", /^wrong-word installation\.trial/],
    ["  serial: [1, 2]\n", /installation\.serial/],
  ])("%j: one message", (text, message) => {
    const found = mistakes(text);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(message);
  });

  test("the same corner of both bases, and holes apart, are in order", () =>
    expect(
      mistakes(
        "  holes: [{ anchor: L1 }, { anchor: R1 }]\n  levels:\n    - { base: left, corner: back-left, level: 0 mm }\n    - { base: right, corner: back-left, level: -2 mm }\n",
      ),
    ).toEqual([]));
});
