/** The cure and saw card: one page, nothing over anything else, the day it says is the clock's; its calendar read back by ical.js. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Assessment, assess } from "@floorworthy/assess";
import { type CureClock, cureClock, cureDays } from "@floorworthy/assess/cure";
import { pourDay } from "@floorworthy/assess/pour-day";
import { isUnable } from "@floorworthy/engine/quantities";
import { type Job, readJob } from "@floorworthy/job";
import { cureCard, type Drawing, onPaper } from "@floorworthy/papers";
import { cureCalendar } from "@floorworthy/papers/calendar";
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";
import { overlaps, strays, wordsOf } from "./reading-back.ts";

const folder = join(import.meta.dirname, "../../examples");
const text = (name: string): string => readFileSync(join(folder, name), "utf8");
const jobOf = (source: string): Job => {
  const read = readJob(source);
  if (!read.ok) throw new Error(read.issues.map(({ path, message }) => `${path} ${message}`).join("\n"));
  return read.job;
};
const cold = text("nine-cold-days.yaml");
const shop = text("new-heated-shop.yaml");
const withPour = (source: string, more: string): Job => jobOf(source.replace("pour:\n", `pour:\n${more}`));

const cases: Readonly<Record<string, Job>> = {
  "nine cold days": jobOf(cold),
  "new heated shop": jobOf(shop),
  "nothing told": jobOf(cold.replace(/ {2}# under the blanket[\s\S]*?(?=installation:)/, "")),
  "a weak field-cured cylinder": withPour(
    cold,
    "  cylinders: [{ strength: 1900 psi, ageDays: 9 d, cured: field }, { strength: 2500 psi, ageDays: 7 d }]\n",
  ),
  "frozen early, a hot pour": withPour(
    shop.replace(/ {2}temperatures:[\s\S]*?(?= {2}waste)/, "  temperatures: [{ fromDay: 0 d, mean: -8 °C }]\n"),
    "  weather: { air: 90 °F, humidity: 20 %, wind: 15 mph, concrete: 96 °F }\n",
  ),
  "in SI": jobOf(cold.replace("title:", "units: si\ntitle:")),
  "no day of the pour": jobOf(shop.replace("  date: 2025-11-12\n", "")),
};

const clockOf = (job: Job, today: string): CureClock => {
  const clock = cureClock(job, today);
  if (isUnable(clock)) throw new Error(clock.reason);
  return clock;
};
const judged = new Map<Job, Assessment>();
/** Judged once: both papers show the same. */
const assessmentOf = (job: Job): Assessment => {
  const known = judged.get(job) ?? assess(job);
  judged.set(job, known);
  return known;
};
const pageOf = (job: Job, paper: "letter" | "a4" = "letter"): Drawing => {
  const pages = cureCard().draw(job, assessmentOf(job), { date: job.date!, paper });
  if (isUnable(pages)) throw new Error(pages.reason);
  expect(pages).toHaveLength(1);
  return pages[0]!;
};

describe.each(Object.entries(cases))("cure and saw card: %s", (_, job) => {
  test.each(["letter", "a4"] as const)("one %s page, nothing outside the margin, no words over words", (paper) => {
    const page = pageOf(job, paper);
    expect(strays(page, 7.9)).toEqual([]);
    expect(overlaps(page)).toEqual([]);
    const said = wordsOf(page).join(" ");
    expect(said).not.toMatch(/NaN|undefined|Infinity|approved|certified|passed|sealed/i);
    expect(Math.min(...onPaper(page).flatMap((m) => (m.kind === "text" ? [m.size] : [])))).toBeGreaterThanOrEqual(1.69);
  });
});

test("the day it says is the clock's; what was read stands in its table; the rest is left to fill in", () => {
  const job = cases["nine cold days"]!;
  const said = wordsOf(pageOf(job));
  const { drilling } = clockOf(job, job.date!);
  expect(said).toContain(`Do not drill before ${drilling.earliest!.date}`);
  for (const words of [
    "38 °F",
    "47 °F",
    "2025-03-03",
    "asked 3,000 psi",
    "maker's 28 days",
    `drill from day ${drilling.earliest!.day}`,
  ])
    expect(said).toContain(words);
});

test("the curves of the chart end where the clock says: the cautious one meets the ask on the cautious day", () => {
  const { curve, strength, ask } = clockOf(cases["nine cold days"]!, "2025-02-13");
  const cautious = curve.find(({ count }) => count === "cautious")!.points;
  const day = strength.cautious!.day;
  const before = cautious.filter((point) => point.day <= day - 1).at(-1)!;
  const after = cautious.find((point) => point.day >= day)!;
  const asked = ask!.value * 0.006894757293168361;
  expect(before.strength).toBeLessThan(asked);
  expect(after.strength).toBeGreaterThanOrEqual(asked);
});

test("none under a stop, and none for a floor of long ago", () => {
  for (const name of [
    "stamp-at-the-door.yaml",
    "store-room-below.yaml",
    "old-floor-no-papers.yaml",
    "records-in-hand.yaml",
  ]) {
    const job = jobOf(text(name));
    const pages = cureCard().draw(job, assess(job), { date: "2026-05-05", paper: "letter" });
    expect(isUnable(pages), name).toBe(true);
  }
  expect(isUnable(cureClock(jobOf(text("stamp-at-the-door.yaml")), "2026-05-05"))).toBe(true);
});

describe("calendar", () => {
  const job = cases["nine cold days"]!;
  const clock = clockOf(job, "2025-02-13");
  const read = (source: string) =>
    new ICAL.Component(ICAL.parse(source)).getAllSubcomponents("vevent").map((component) => new ICAL.Event(component));
  test("pour and saw, cylinders, covers, earliest drilling, rounds: whole days, as they went in", () => {
    const events = read(cureCalendar(job, clock, pourDay(job))!);
    expect(events.map(({ uid }) => uid.replace(/^.*(?=cure-|round-)/, "").replace("@floorworthy", ""))).toEqual([
      "cure-saw",
      "cure-cylinder-7",
      "cure-covers-off",
      "cure-cylinder-28",
      "cure-cylinder-field",
      "cure-drilling",
      "round-1",
      "round-2",
      "round-3",
    ]);
    expect(events.every(({ startDate }) => startDate.isDate)).toBe(true);
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(9);
    const on = (id: string) => events.find(({ uid }) => uid.includes(id))!.startDate.toString();
    expect([on("cylinder-7"), on("cylinder-28"), on("drilling")]).toEqual([
      "2025-02-11",
      "2025-03-04",
      clock.drilling.earliest!.date,
    ]);
    expect(on("cylinder-field") < on("drilling")).toBe(true);
    expect(on("round-1") > on("drilling")).toBe(true);
  });
  test("a warmer story moves the days and keeps their names", () => {
    const warm = clockOf(withPour(cold, "").pour ? withHeat(job) : job, "2025-02-13");
    const ids = (c: CureClock, j: Job) => cureDays(j, c, pourDay(j)).map(({ id }) => id);
    expect(ids(warm, withHeat(job))).toEqual(ids(clock, job));
    expect(warm.drilling.earliest!.date! < clock.drilling.earliest!.date!).toBe(true);
  });
  test("no day of the pour, no calendar", () => {
    const open = cases["no day of the pour"]!;
    expect(cureCalendar(open, clockOf(open, "2025-11-12"), pourDay(open))).toBeUndefined();
  });
});

const withHeat = (job: Job): Job => ({
  ...job,
  pour: {
    ...job.pour!,
    covers: [
      {
        what: "heater",
        fromDay: 9,
        toDay: undefined,
        holds: { known: true, value: 16, low: 16, high: 16, basis: { kind: "stated" }, written: "16 °C" },
      },
    ],
  },
});
