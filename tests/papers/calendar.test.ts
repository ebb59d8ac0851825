/** The calendar is read back by ical.js, an independent reader of RFC 5545; the table by csv-parse (RFC 4180). */
import { type CalendarEvent, calendar } from "@floorworthy/papers/calendar";
import { csv } from "@floorworthy/papers/csv";
import { parse } from "csv-parse/sync";
import fc from "fast-check";
import ICAL from "ical.js";
import { describe, expect, test } from "vitest";

const stamp = "2026-11-25";
const events: readonly CalendarEvent[] = [
  {
    id: "round-1",
    date: "2026-12-01",
    title: "Round of the nuts; first, month",
    detail: "Bring the wrench,\nand the card \\ pen.",
    place: "Garage, 4 Möwen Lane",
    remindDaysBefore: [7, 1],
  },
  { id: "round-2", date: "2028-02-29", title: "Yearly round" },
];

const read = (text: string) =>
  new ICAL.Component(ICAL.parse(text)).getAllSubcomponents("vevent").map((component) => {
    const event = new ICAL.Event(component);
    return {
      uid: event.uid,
      isDate: event.startDate.isDate,
      date: event.startDate.toString(),
      title: event.summary,
      detail: event.description,
      place: event.location,
      stamp: String(component.getFirstPropertyValue("dtstamp")),
      alarms: component
        .getAllSubcomponents("valarm")
        .map((alarm) => [alarm.getFirstPropertyValue("action"), String(alarm.getFirstPropertyValue("trigger"))]),
    };
  });

describe("calendar", () => {
  test("whole days with reminders come back as they went in", () => {
    const [first, second] = read(calendar(events, { stamp, name: "Rounds" }));
    expect(first).toEqual({
      uid: "round-1@floorworthy",
      isDate: true,
      date: "2026-12-01",
      title: events[0]!.title,
      detail: events[0]!.detail,
      place: events[0]!.place,
      stamp: "2026-11-25T00:00:00Z",
      alarms: [
        ["DISPLAY", "-P7D"],
        ["DISPLAY", "-P1D"],
      ],
    });
    expect(second).toMatchObject({ uid: "round-2@floorworthy", isDate: true, date: "2028-02-29", alarms: [] });
  });
  test("lines end with CR LF and are no longer than 75 octets", () => {
    const text = calendar([{ ...events[0]!, detail: "ü".repeat(200) }], { stamp });
    expect(text.replaceAll("\r\n", "")).not.toMatch(/[\r\n]/);
    for (const line of text.split("\r\n")) expect(new TextEncoder().encode(line).length).toBeLessThanOrEqual(75);
  });
  test("the same input gives the same bytes", () =>
    expect(calendar(events, { stamp })).toBe(calendar(events, { stamp })));
  test("whatever the words, they come back", () =>
    fc.assert(
      fc.property(fc.string({ unit: "grapheme", minLength: 1, maxLength: 90 }), (words) => {
        const title = words.replace(/[\p{C}]/gu, "x").trim() || "x";
        expect(read(calendar([{ id: "a", date: "2027-01-31", title }], { stamp }))[0]!.title).toBe(title);
      }),
      { numRuns: 100 },
    ));
  test("a day that is not one, or one id twice, is a bug of the caller", () => {
    expect(() => calendar([{ id: "a", date: "soon", title: "x" }], { stamp })).toThrow(/not a date/);
    expect(() => calendar([events[0]!, events[0]!], { stamp })).toThrow(/two events/);
  });
});

describe("comma-separated table", () => {
  test("quotes, commas and line ends come back; nothing recorded is an empty cell", () => {
    const text = csv(
      ["a", "b"],
      [
        ['5/8", long', undefined],
        ["two\nlines", 3.25],
      ],
    );
    expect(parse(text)).toEqual([
      ["a", "b"],
      ['5/8", long', ""],
      ["two\nlines", "3.25"],
    ]);
    expect(text.endsWith("\r\n")).toBe(true);
  });
  test.each(["=1+1", "+A1", "-2 turns", "@cmd"])("%s is not run as a formula", (words) =>
    expect(parse(csv(["note"], [[words]]))[1]).toEqual([`'${words}`]),
  );
  test("a negative number stays a number", () => expect(parse(csv(["n"], [[-3]]))[1]).toEqual(["-3"]));
});
