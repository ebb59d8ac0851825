/** Mistakes in the story of the fresh concrete: each one message, all of them at once. */
import { printIssue, readJob } from "@floorworthy/job";
import { expect, test } from "vitest";

const HEAD = "floorworthy: 1\ntitle: t\nlift: { name: L, kind: two-post }\n";
const said = (text: string): string[] => {
  const read = readJob(HEAD + text);
  return read.ok ? [] : read.issues.map((issue) => printIssue(issue, "job"));
};

test("days before the pour, twice, without a day; ends swapped; months twice; covers that end before they begin", () =>
  expect(
    said(
      [
        "pour:",
        "  date: 2025-02-04",
        "  temperatures: [{ fromDay: 3 d, toDay: 2 d, mean: 40 °F }]",
        "  days:",
        "    - { on: 2025-02-03, low: 30 °F, high: 40 °F }",
        "    - { on: 2025-02-05, low: 45 °F, high: 40 °F }",
        "    - { day: 1 d, low: 30 °F, high: 40 °F }",
        "    - { low: 30 °F, high: 40 °F }",
        "    - { day: 4 d, low: cold, high: 40 psi }",
        "    - { on: 2025-02-30, low: 1 °C, high: 2 °C }",
        "  months: [{ month: march, mean: 5 °C }, { month: march, mean: 6 °C }, { month: sept, mean: 12 °C }]",
        "  covers: [{ what: tent, fromDay: 0 d }, { what: heater, fromDay: 4 d, toDay: 1 d, holds: 60 °F }]",
        "  weather: { humidity: 60, wind: -3 mph, air: 70 }",
        "  cylinders: [{ strength: 2100 psi }]",
        "",
      ].join("\n"),
    ),
  ).toMatchInlineSnapshot(`
    [
      "job:6:41  pour.temperatures[0].toDay: The last day, 2, is not after the first, 3. Count both from the day of the pour.",
      "job:8:7  pour.days[0]: 2025-02-03 lies before the pour, 2025-02-04. Correct one of the two.",
      "job:9:7  pour.days[1]: The lowest of the day lies above its highest. Swap them.",
      "job:10:7  pour.days[2]: This day stands twice. Keep one entry of each day.",
      "job:11:7  pour.days[3]: The day is missing. Write on: with a date, or day: counted from the pour.",
      "job:12:24  pour.days[4].low: "cold" is not a temperature. Write a number and a unit, such as 70 °F or 21 °C.",
      "job:12:36  pour.days[4].high: "40 psi" is a strength or pressure; a temperature was expected. Write a number and a unit, such as 70 °F or 21 °C.",
      "job:13:13  pour.days[5].on: The date 2025-02-30 does not exist. Write year-month-day, such as 2025-03-04.",
      "job:14:51  pour.months[1].month: march stands twice. Keep one mean of each month.",
      "job:14:81  pour.months[2].month: "sept" is not a word of the list. Did you mean september? Write one of: january, february, march, april, may, june, july, august, september, october, november, december.",
      "job:15:20  pour.covers[0].what: "tent" is not a word of the list. Write one of: blanket, heater.",
      "job:15:79  pour.covers[1].toDay: The last day, 1, is not after the first, 4. Count both from the day of the pour.",
      "job:16:24  pour.weather.humidity: "60" is more than all the air can hold. Write the relative humidity as a share, such as 45 %.",
      "job:16:34  pour.weather.wind: "-3 mph" is negative. Write a speed of zero or more.",
      "job:16:47  pour.weather.air: "70" has no unit; a temperature was expected. Write a number and a unit, such as 70 °F or 21 °C.",
      "job:17:15  pour.cylinders[0].ageDays: "ageDays" is missing. Needed: its age when broken.",
    ]
  `));

test("a story without a day is refused where it is read", () =>
  expect(
    said("pour:\n  temperatures: []\n  days: []\n  months: []\n").map((line) => line.replace(/^job:\S+ +/, "")),
  ).toEqual(
    ["temperatures", "days", "months"].map(
      (key) => `pour.${key}: The list of temperatures is empty. Write what was measured, or leave the key out.`,
    ),
  ));

test("a date of a day needs the day of the pour", () =>
  expect(said("pour:\n  days: [{ on: 2025-02-05, low: 30 °F, high: 40 °F }]\n").join()).toMatch(
    /pour\.days\[0\]: A date needs the day of the pour/,
  ));

test("spells, days, months, covers, weather and cylinders are read without a word", () => {
  const read = readJob(
    `${HEAD}pour:
  date: 2025-02-04
  cement: I
  temperatures: [{ fromDay: 0 d, toDay: 2 d, mean: 58 °F }, { fromDay: 2 d, mean: { low: 36 °F, high: 44 °F } }]
  days: [{ on: 2025-02-06, low: 36 °F, high: 49 °F }, { day: 3 d, low: 35 °F, high: 47 °F }]
  months: [{ month: february, mean: 30 °F }, { month: march, mean: 39 °F }]
  covers: [{ what: blanket, fromDay: 0 d, toDay: 2 d }, { what: heater, fromDay: 9 d, holds: 60 °F }]
  weather: { air: 40 °F, humidity: 70 %, wind: 5 mph, concrete: 60 °F }
  cylinders: [{ strength: 2100 psi, ageDays: 9 d, cured: field }]
`,
  );
  expect(read.ok && read.warnings).toEqual([]);
  expect(read.ok && read.job.pour?.days?.map(({ low }) => low.toFixed(2))).toEqual(["2.22", "1.67"]);
  expect(read.ok && read.job.pour?.cylinders?.[0]?.cured).toBe("field");
});
