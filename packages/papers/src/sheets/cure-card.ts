/** One page for the crew and the owner: saw, covers, temperatures to write down, cylinders, the day for drilling. */
import type { Assessment } from "@floorworthy/assess";
import { type CureClock, cureClock, type LogReading } from "@floorworthy/assess/cure";
import { type PourDay, pourDay, type Weather } from "@floorworthy/assess/pour-day";
import type { Rect } from "@floorworthy/engine/geometry";
import { isUnable, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { strengthChart } from "../charts/strength-chart.ts";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { wrapText } from "../drawing/wrap-text.ts";
import { dayAfter } from "../print/calendar-day.ts";
import { printTemperature } from "../print/measure.ts";
import { cureNotes } from "./cure-notes.ts";
import { evenNotes } from "./even-notes.ts";
import { bodyOf, framed, rule, words } from "./frame.ts";
import type { Sheet, SheetOptions } from "./sheet.ts";
import { setTable, type Table } from "./table.ts";

const PLACE = "cure and saw card";
const GAP = 4;
/** Where the maker's page has no days. */
const LEAST_DAYS = 28;
const HEAD = 15;

/** The day, large enough to be read from the door. */
const bigDay = ({ drilling, maker, strength, poured, pour }: CureClock, box: Rect): readonly Item[] => {
  const { earliest } = drilling;
  const big =
    pour === "gone-by"
      ? `Was it poured on ${poured}?`
      : !earliest
        ? "No day for drilling yet"
        : !Number.isFinite(earliest.day)
          ? "Do not drill on a date: keep it warm"
          : `Do not drill before ${earliest.date ?? `day ${earliest.day}`}`;
  const small = [
    poured ? `day 0 is ${poured}` : "day of the pour not set",
    maker ? `the maker's days end on ${maker.date ?? `day ${maker.day}`}` : "the maker's days are not known",
    strength.state === "not-known" ? "no temperatures told: no day for the strength" : "",
  ];
  return [
    words("note-day", box.x0 + 2, box.y0 + 8, big, 6, { lettering: "bold" }),
    words("note-day", box.x0 + 2, box.y0 + 12.6, small.filter((s) => s !== "").join("; "), 2.5),
    rule(box.x0, box.y0 + HEAD, box.x1, box.y0 + HEAD),
  ];
};

const ROWS = 14;

/** Lowest and highest of each day, filled in by hand; dates are there where the day of the pour is. */
const dayTable = (job: Job, poured: string | undefined, from: number, rowHeight: number): Table => ({
  tag: "note-temperatures",
  size: 1.9,
  rowHeight,
  columns: [
    { heading: "Day", share: 8, align: "end" },
    { heading: "Date", share: 14 },
    { heading: "Lowest", share: 14 },
    { heading: "Highest", share: 14 },
    { heading: "Cover on", share: 14 },
    { heading: "By", share: 10 },
  ],
  rows: Array.from({ length: ROWS }, (_, i) => [
    String(from + i),
    poured ? (dayAfter(poured, from + i) ?? "") : "",
    ...readOn(job, poured, from + i),
    "",
    "",
  ]),
});

/** What the job already has of a day. */
const readOn = ({ pour, units }: Job, poured: string | undefined, day: number): readonly [string, string] => {
  const date = poured && dayAfter(poured, day);
  const found = pour?.days?.find((entry) =>
    entry.day === undefined ? entry.on === date : Math.floor(entry.day) === day,
  );
  return found ? [printTemperature(found.low, units), printTemperature(found.high, units)] : ["", ""];
};

const tables = (job: Job, clock: CureClock, box: Rect): { readonly items: readonly Item[]; readonly top: number } => {
  const middle = (box.x0 + box.x1) / 2;
  const row = 4.3;
  const columns = [
    { x0: box.x0 + 2, x1: middle - GAP / 2, from: 0 },
    { x0: middle + GAP / 2, x1: box.x1 - 2, from: ROWS },
  ];
  const height = setTable(dayTable(job, clock.poured, 0, row), {
    ...box,
    x0: columns[0]!.x0,
    x1: columns[0]!.x1,
    y0: 0,
  }).bottom;
  const top = box.y1 - 2 - height;
  const heading = "Thermometer on the concrete, under the cover: write down every day, and run the clock again with it";
  return {
    top: top - 4.2,
    items: [
      words("note-temperatures", box.x0 + 2, top - 1.4, heading, 2.3, { lettering: "bold" }),
      ...columns.flatMap(
        ({ x0, x1, from }) => setTable(dayTable(job, clock.poured, from, row), { ...box, x0, x1, y0: top }).items,
      ),
    ],
  };
};

/** Height of the chart and the least size of the words beside it, mm, the best first. */
const heights = [
  [84, 2.25],
  [74, 2.2],
  [66, 2.1],
  [56, 1.95],
  [46, 0],
] as const;

const chartTitle = (clock: CureClock): string =>
  clock.told === "not-told"
    ? `No temperatures told. Strength by the cautious count, were it always as warm as this: ${clock.gain.words}.`
    : `Strength expected at the temperatures told: ${clock.gain.words}. Hatched: what both datum temperatures and the range of the temperatures leave open.`;

const body = (job: Job, clock: CureClock, pour: PourDay, box: Rect): readonly Item[] | undefined => {
  const below = tables(job, clock, box);
  const drawn = clock.curve.length > 0;
  for (const [chart, least] of drawn ? heights : ([[0, 0]] as const)) {
    const top = box.y0 + HEAD;
    const plot = { x0: box.x0, x1: box.x1, y0: top + 6, y1: top + 6 + chart };
    const notesTop = drawn ? plot.y1 + 1 : top + 2;
    const width = (box.x1 - box.x0 - 4 - 2 * GAP) / 3;
    const columns = Array.from({ length: 3 }, (_, i) => {
      const x0 = box.x0 + 2 + i * (width + GAP);
      return { x0, x1: x0 + width, y0: notesTop, y1: below.top - 2 };
    });
    const notes = evenNotes(cureNotes(job, clock, pour), columns, 2.3);
    if (notes && notes.size >= least)
      return [
        ...bigDay(clock, box),
        ...(drawn
          ? [
              ...wrapText(chartTitle(clock), 2.1, "regular", box.x1 - box.x0 - 6).map((text, i) =>
                words("note-chart", box.x0 + 2, top + 3.4 + i * 2.5, text, 2.1),
              ),
              ...strengthChart(clock, plot),
              rule(box.x0, plot.y1, box.x1, plot.y1),
            ]
          : []),
        ...notes.items,
        rule(box.x0, below.top - 1, box.x1, below.top - 1),
        ...below.items,
      ];
  }
  return undefined;
};

const refused = ({ stops, outcome, reasons }: Assessment): string | undefined => {
  const [stop] = stops;
  if (stop) return `${stop.reason} ${stop.next}`.trim();
  return outcome === "refuse" || outcome === "refer" || outcome === "out-of-service"
    ? `No card is given for this floor. ${reasons.join(" ")}`
    : undefined;
};

const draw =
  (weather: Weather, log: readonly LogReading[]) =>
  (job: Job, assessment: Assessment, { date, paper }: SheetOptions): readonly Drawing[] | Unable => {
    const why = refused(assessment);
    if (why) return unable(PLACE, why);
    const clock = cureClock(job, date, { log });
    if (isUnable(clock)) return clock;
    if (clock.told === "not-told" && (clock.age ?? 0) > (clock.maker?.day ?? LEAST_DAYS))
      return unable(
        PLACE,
        "The maker's days are over and no temperatures were told: there is nothing left to write down.",
      );
    const frame = { paper, lies: "upright" } as const;
    const items = body(job, clock, pourDay(job, weather, { log }), bodyOf(frame));
    if (!items) return unable(PLACE, "There is too much to say for one readable page.");
    const blank = (caption: string) => ({ caption, words: [] });
    const given = (text: string | undefined) => (text ? [text] : []);
    return [
      framed(
        {
          ...frame,
          title: "Cure and saw card",
          sentence: clock.sentence,
          aside: `as of ${date}`,
          description: `${clock.sentence} ${clock.counts.map(({ words: by, date: on }) => `${by}: ${on ? `day ${on.day}` : ""}`).join("; ")}`,
          cells: [
            { share: 66, cells: [{ caption: "Job", words: [job.title, ...given(job.customer), ...given(job.place)] }] },
            { share: 40, cells: [{ caption: "Concrete", words: [clock.concrete] }] },
            {
              share: 34,
              cells: [
                clock.pour === "poured" ? { caption: "Poured", words: [clock.poured ?? ""] } : blank("Poured, hour"),
                blank("Sawn, hour"),
              ],
            },
            { share: 34, cells: [blank("Covers off"), blank("Thermometer read by")] },
            { share: 34, cells: [blank("Field cylinder, strength"), blank("Drilling begun")] },
          ],
        },
        items,
      ),
    ];
  };

/** The card with what was given beside the job: the weather of pour day and a logger's readings. */
export const cureCard = (weather: Weather = {}, log: readonly LogReading[] = []): Sheet => ({
  name: "cure",
  title: "Cure and saw card",
  reader: "for the crew and the owner",
  draw: draw(weather, log),
});

export const cureSheet: Sheet = cureCard();
