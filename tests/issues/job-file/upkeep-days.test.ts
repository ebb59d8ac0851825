/** Mistakes in the years after: each one message, all of them at once. */
import { printIssue, readJob } from "@floorworthy/job";
import { expect, test } from "vitest";

const HEAD = "floorworthy: 1\ntitle: t\nlift: { name: L, kind: two-post }\n";
const said = (text: string): string[] => {
  const read = readJob(HEAD + text);
  return read.ok ? [] : read.issues.map((issue) => printIssue(issue, "job"));
};

test("days out of order, twice, before the setting; anchors twice; angles that cannot be; wrong units", () => {
  expect(
    said(
      [
        "installation: { date: 2024-03-01 }",
        "visits:",
        "  - { date: 2024-02-01 }",
        "  - date: 2024-05-01",
        "    readings:",
        "      - { anchor: L1, turned: 1900 deg, found: 60 lb-ft }",
        "      - { anchor: l1, turned: 10 in }",
        "      - { anchor: L2, turned: -10 deg, found: 60 lb }",
        "      - { anchor: L3, turned: 15, found: 40 }",
        "  - { date: 2024-04-01 }",
        "  - { date: 2024-05-01 }",
        "  - { date: 2024-13-01 }",
        "floor:",
        "  cracks:",
        "    - name: C1",
        "      line: [[0 in, 0 in], [20 in, 0 in]]",
        "      seen: [{ on: 2024-06-01, width: 0.5 mm }, { on: 2024-05-01, width: 0.4 mm }]",
        "",
      ].join("\n"),
    ),
  ).toMatchInlineSnapshot(`
    [
      "job:6:13  visits[0].date: The round of 2024-02-01 is not after the day the lift was set, 2024-03-01. Correct one of the two; the torque of the first day belongs to installation.holes.",
      "job:9:31  visits[1].readings[0].turned: "1900 deg" is more than 5 full turns; the nut would have left its bolt. Check the figure and its unit: 90 deg is a quarter turn.",
      "job:10:19  visits[1].readings[1].anchor: The round of 2024-05-01 reads l1 twice. Keep one reading of each anchor and day.",
      "job:10:31  visits[1].readings[1].turned: "10 in" is a length; an angle was expected. Write a number and a unit, such as 30 deg.",
      "job:11:31  visits[1].readings[2].turned: "-10 deg" is negative. Write an angle of zero or more.",
      "job:11:47  visits[1].readings[2].found: "60 lb" is a weight or force; a torque or moment was expected. Write a number and a unit, such as 120 lb-ft or 160 N·m.",
      "job:12:31  visits[1].readings[3].turned: "15" has no unit; an angle was expected. Write a number and a unit, such as 30 deg.",
      "job:12:42  visits[1].readings[3].found: "40" has no unit; a torque or moment was expected. Write a number and a unit, such as 120 lb-ft or 160 N·m.",
      "job:13:13  visits[2].date: Rounds of the nuts: 2024-04-01 stands after 2024-05-01. Write the oldest first.",
      "job:14:13  visits[3].date: Rounds of the nuts: 2024-05-01 stands twice. Put the readings of one day together, or correct the date.",
      "job:15:13  visits[4].date: The date 2024-13-01 does not exist. Write year-month-day, such as 2025-03-04.",
      "job:20:55  floor.cracks[0].seen[1].on: Looks at crack C1: 2024-05-01 stands after 2024-06-01. Write the oldest first.",
    ]
  `);
});

test("days in order are read without a word", () =>
  expect(
    said(
      "installation: { date: 2024-03-01 }\nvisits:\n  - { date: 2024-04-01, readings: [{ anchor: L1, turned: 2 turn, state: spins, sound: hollow }] }\n  - { date: 2025-04-01 }\nvehicles: [{ name: van, offset: -4 in, since: 2025-01-01 }]\n",
    ),
  ).toEqual([]));

test("one mistake, one message: a day that stands twice is not also out of order", () =>
  expect(said("visits: [{ date: 2025-01-01 }, { date: 2026-01-01 }, { date: 2025-01-01 }]\n")).toHaveLength(1));
