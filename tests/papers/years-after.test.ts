/** The chart of the years, the card for the round, history and calendar: one page each, nothing over anything else. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { assess } from "@floorworthy/assess";
import { upkeepOf } from "@floorworthy/assess/upkeep";
import { isUnable } from "@floorworthy/engine/quantities";
import { type Job, readJob } from "@floorworthy/job";
import { type Sheet, torqueCardSheet, torqueTrendSheet } from "@floorworthy/papers";
import { roundsCalendar } from "@floorworthy/papers/calendar";
import { historyCsv } from "@floorworthy/papers/csv";
import { parse } from "csv-parse/sync";
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { overlaps, strays, wordsOf } from "./reading-back.ts";

const folder = join(import.meta.dirname, "../../examples");
const text = readFileSync(join(folder, "four-years-of-rounds.yaml"), "utf8");
const jobFrom = (source: string): Job => {
  const read = readJob(source);
  if (!read.ok) throw new Error(read.issues.map((issue) => issue.message).join("\n"));
  return read.job;
};
const slipping = jobFrom(text);
/** the same lift without its bad anchor and its crack */
const settling = jobFrom(
  text
    .replace(/ {2}cracks:.*?(?=columns:)/s, "")
    .replace(
      /\{\s*anchor: L2,\s*found: \d+ lb-ft,\s*turned: \d+ deg,\s*projection: [^}]*\}/g,
      "{ anchor: L2, found: 80 lb-ft, turned: 5 deg }",
    ),
);
const pagesOf = (sheet: Sheet, job: Job, paper: "letter" | "a4" = "letter", date = "2026-05-11") =>
  sheet.draw(job, assess(job), { date, paper });
const only = (pages: ReturnType<typeof pagesOf>) => {
  if (isUnable(pages)) throw new Error(pages.reason);
  expect(pages).toHaveLength(1);
  return pages[0]!;
};

describe.each(["letter", "a4"] as const)("on %s", (paper) => {
  test.each([
    ["chart, settling", torqueTrendSheet, settling],
    ["chart, slipping", torqueTrendSheet, slipping],
    ["card", torqueCardSheet, settling],
  ] as const)("%s: nothing strays, nothing overlaps", (_, sheet, job) => {
    const page = only(pagesOf(sheet, job, paper));
    expect(strays(page, 7.9)).toEqual([]);
    expect(overlaps(page)).toEqual([]);
    expect(wordsOf(page).join(" ")).not.toMatch(/NaN|undefined|approved|certified|passed/i);
  });
});

test("the chart names the anchor that is out of service, and draws as many full circles as readings", () => {
  const page = only(pagesOf(torqueTrendSheet, slipping));
  expect(wordsOf(page).join(" ")).toContain("OUT OF SERVICE");
  const circles = page.items.filter((item) => item.kind === "circle" && item.hatch === "ink");
  expect(circles.length).toBe(slipping.visits.reduce((sum, { readings }) => sum + readings.length, 0));
});

test("places on the chart follow the readings: higher take-up stands higher, later stands farther right", () => {
  const page = only(pagesOf(torqueTrendSheet, slipping));
  const line = page.items
    .flatMap((item) => (item.kind === "polyline" ? [item.points] : []))
    .toSorted((a, b) => Math.min(...a.map((p) => p.y)) - Math.min(...b.map((p) => p.y)));
  for (const points of line) {
    expect(points.map(({ x }) => x)).toEqual(points.map(({ x }) => x).toSorted((a, b) => a - b));
    expect(points.map(({ y }) => y)).toEqual(points.map(({ y }) => y).toSorted((a, b) => b - a));
  }
});

test("every anchor once on the card, crosswise within its base", () => {
  const table = wordsOf(only(pagesOf(torqueCardSheet, settling)));
  const anchors = table.filter((words) => /^[LR][1-5]$/.test(words));
  expect(anchors).toEqual(["L1", "L5", "L2", "L4", "L3", "R1", "R5", "R2", "R4", "R3"]);
});

test("no card under a stop, with the reason; no chart before the first round", () => {
  const card = pagesOf(torqueCardSheet, slipping);
  expect(isUnable(card) && card.reason).toMatch(/stop stands.*L2 slips/);
  const chart = pagesOf(torqueTrendSheet, { ...settling, visits: [] });
  expect(isUnable(chart) && chart.reason).toContain("No round");
});

describe("history", () => {
  const rows = parse(historyCsv(slipping, upkeepOf(slipping, "2026-05-11")), { columns: true }) as Record<
    string,
    string
  >[];
  test("a line for every reading, oldest first, as it was written", () => {
    expect(rows).toHaveLength(slipping.visits.reduce((sum, { readings }) => sum + readings.length, 0));
    expect(rows.map(({ date }) => date)).toEqual(rows.map(({ date }) => date).toSorted());
    expect(rows.findLast(({ anchor }) => anchor === "L2")).toMatchObject({
      date: "2026-05-09",
      "found, lb-ft": "25",
      "turned, deg": "140",
      "pattern so far": "slipping",
      sound: "hollow",
      note: "dust ring around the washer",
    });
  });
  test("a note that looks like a formula is not run", () => {
    const job = jobFrom(text.replace("dust ring around the washer", '"=HYPERLINK(1)"'));
    expect(historyCsv(job, upkeepOf(job, "2026-05-11"))).toContain("'=HYPERLINK(1)");
  });
});

describe("calendar of rounds", () => {
  const events = (file: string) =>
    new ICAL.Component(ICAL.parse(file)).getAllSubcomponents("vevent").map((component) => new ICAL.Event(component));
  test("three rounds from the next one on, all-day, with reminders and stable names", () => {
    const file = roundsCalendar(settling, upkeepOf(settling, "2026-05-11"), "2026-05-11")!;
    const read = events(file);
    expect(read.map((event) => event.startDate.toString())).toEqual(["2027-05-09", "2028-05-08", "2029-05-08"]);
    expect(read[0]!.description).toContain("one year after the last round");
    for (const event of read) {
      expect(event.startDate.isDate).toBe(true);
      expect(event.component.getAllSubcomponents("valarm")).toHaveLength(2);
    }
    const later = events(roundsCalendar(settling, upkeepOf(settling, "2027-08-01"), "2027-08-01")!);
    expect(later.map(({ uid }) => uid)).toEqual(read.map(({ uid }) => uid));
  });
  test("the same input gives the same bytes; out of service gives no calendar", () => {
    const upkeep = upkeepOf(settling, "2026-05-11");
    expect(roundsCalendar(settling, upkeep, "2026-05-11")).toBe(roundsCalendar(settling, upkeep, "2026-05-11"));
    expect(roundsCalendar(slipping, upkeepOf(slipping, "2026-05-11"), "2026-05-11")).toBeUndefined();
  });
});
