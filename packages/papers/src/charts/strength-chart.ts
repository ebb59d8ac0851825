import type { CureClock } from "@floorworthy/assess/cure";
import type { Point, Rect } from "@floorworthy/engine/geometry";
import { fromBase, printNumber, toBase } from "@floorworthy/engine/quantities";
import type { Item, Line } from "../drawing/drawing.ts";
import type { PenName } from "../drawing/pens.ts";
import { dayAfter } from "../print/calendar-day.ts";
import { words } from "../sheets/frame.ts";
import { type Axis, axis } from "./axis.ts";

const SMALL = 1.9;
const TAG = "charts";

const line = (x0: number, y0: number, x1: number, y1: number, pen: Line["pen"]): Item => ({
  kind: "line",
  tag: TAG,
  from: { x: x0, y: y0 },
  to: { x: x1, y: y1 },
  pen,
});

const pens = { cautious: "edge", usual: "planned", arrhenius: "centre-line" } as const satisfies Record<
  string,
  PenName
>;
/** Lines in their order: by count, or one temperature after another where none was told. */
const penOf = ({ told }: CureClock, count: keyof typeof pens, place: number): PenName =>
  told === "told" ? pens[count] : (["edge", "planned", "centre-line", "hidden"] as const)[place % 4]!;

interface Scales {
  readonly time: Axis;
  readonly strength: Axis;
}

const unitOf = ({ units }: CureClock): "psi" | "MPa" => (units === "si" ? "MPa" : "psi");

const mpa = (term: CureClock["ask"]): number | undefined =>
  term === undefined ? undefined : toBase(term.value, term.unit);

/** Strength against days: the band of both datums, Arrhenius beside, the ask, the days that count, cylinders. Where no temperatures were told, the cautious count at some that never change. */
export const strengthChart = (clock: CureClock, box: Rect): readonly Item[] => {
  const [first] = clock.curve;
  if (!first) return [];
  const scales = scalesFor(clock, box);
  return [
    ...(clock.told === "told" ? bandOf(clock, scales) : []),
    ...frameOf(clock, scales),
    ...clock.curve.map(
      ({ count, points }, i): Item => ({
        kind: "polyline",
        tag: TAG,
        points: points.map(({ day, strength }) => at(scales, day, strength)),
        pen: penOf(clock, count, i),
      }),
    ),
    ...askLine(clock, scales),
    ...dayLines(clock, scales),
    ...cylinderMarks(clock, scales),
    ...legendOf(clock, box),
  ];
};

const at = ({ time, strength }: Scales, day: number, value: number): Point => ({
  x: time.at(day),
  y: strength.at(Math.min(value, strength.high)),
});

const scalesFor = (clock: CureClock, box: Rect): Scales => {
  const span = clock.curve[0]!.points.at(-1)!.day;
  const ends = clock.curve.map(({ points }) => points.at(-1)!.strength);
  const most = 1.12 * Math.max(...ends, mpa(clock.ask) ?? 0, ...clock.cylinders.map(({ lowest }) => lowest));
  return {
    time: axis(0, span, box.x0 + 13, box.x1 - 3),
    strength: axis(0, most, box.y1 - 12, box.y0 + 4),
  };
};

/** Between the two datums. */
const bandOf = ({ curve }: CureClock, scales: Scales): readonly Item[] => {
  const [cautious, usual] = [curve.find((c) => c.count === "cautious"), curve.find((c) => c.count === "usual")];
  if (!cautious || !usual) return [];
  const place = ({ day, strength }: { day: number; strength: number }) => at(scales, day, strength);
  return [
    {
      kind: "polygon",
      tag: TAG,
      points: [...cautious.points.map(place), ...usual.points.toReversed().map(place)],
      hatch: "diagonal",
    },
  ];
};

const frameOf = (clock: CureClock, { time, strength }: Scales): readonly Item[] => {
  const [x0, x1, y0, y1] = [time.at(0), time.at(time.high), strength.at(0), strength.at(strength.high)];
  const unit = unitOf(clock);
  const step = unit === "psi" ? 1000 : 10;
  const steps = Array.from({ length: Math.floor(fromBase(strength.high, unit) / step) + 1 }, (_, i) => i * step);
  const apart = [7, 14, 28].find((d) => time.high / d <= 10) ?? 28;
  const days = Array.from({ length: Math.floor(time.high / apart) + 1 }, (_, i) => i * apart);
  return [
    line(x0, y0, x1, y0, "thin"),
    line(x0, y0, x0, y1, "thin"),
    ...steps.flatMap((value) => {
      const y = strength.at(toBase(value, unit));
      return [
        line(x0 - 0.8, y, x0, y, "thin"),
        words("note-chart", x0 - 1.3, y + 0.65, printNumber(value, 0), SMALL, { align: "end" }),
      ];
    }),
    words("note-chart", x0 - 1.3, y1 - 1.2, unit, SMALL, { align: "end" }),
    ...days.flatMap((day) => [
      line(time.at(day), y0, time.at(day), y0 + 0.8, "thin"),
      words("note-chart", time.at(day), y0 + 3, String(day), SMALL, { align: "middle" }),
      ...(clock.poured
        ? [
            words("note-chart", time.at(day), y0 + 5.4, (dayAfter(clock.poured, day) ?? "").slice(5), SMALL, {
              align: "middle",
            }),
          ]
        : []),
    ]),
    words("note-chart", x0 - 4.4, y0 + 3, "days", SMALL, { align: "end" }),
    ...(clock.poured ? [words("note-chart", x0 - 4.4, y0 + 5.4, "date", SMALL, { align: "end" })] : []),
  ];
};

const askLine = (clock: CureClock, { time, strength }: Scales): readonly Item[] => {
  const ask = mpa(clock.ask);
  if (ask === undefined) return [];
  const y = strength.at(ask);
  return [
    line(time.at(0), y, time.at(time.high), y, "thin"),
    words(
      "note-chart",
      time.at(0) + 1,
      y - 0.8,
      `asked ${printNumber(Math.round(clock.ask!.value), 0)} ${unitOf(clock)}`,
      SMALL,
      {
        lettering: "bold",
        behind: "cleared",
      },
    ),
  ];
};

interface Marked {
  readonly day: number;
  readonly what: string;
  readonly pen: PenName;
}

/** Upright lines with their words at the foot of the plot, stepped where they would touch. */
const dayLines = (clock: CureClock, { time, strength }: Scales): readonly Item[] => {
  const { drilling, maker, age } = clock;
  const drill = drilling.earliest?.day;
  const all: readonly Marked[] = [
    ...(age !== undefined && age > 0 ? [{ day: age, what: "today", pen: "hidden" as const }] : []),
    ...(maker && maker.day !== drill
      ? [{ day: maker.day, what: `maker's ${maker.day} days`, pen: "hidden" as const }]
      : []),
    ...(drill !== undefined && Number.isFinite(drill)
      ? [
          {
            day: drill,
            what: drill === maker?.day ? `drill from day ${drill}: maker's days` : `drill from day ${drill}`,
            pen: "plate" as const,
          },
        ]
      : []),
  ];
  return all
    .filter(({ day }) => day <= time.high)
    .flatMap(({ day, what, pen }, i) => {
      const x = time.at(day);
      const right = x > time.at(time.high * 0.6);
      return [
        line(x, strength.at(0), x, strength.at(strength.high), pen),
        words("note-chart", x + (right ? -0.8 : 0.8), strength.at(0) - 1.2 - i * 2.6, what, SMALL, {
          align: right ? "end" : "start",
          lettering: pen === "plate" ? "bold" : "regular",
          behind: "cleared",
        }),
      ];
    });
};

const cylinderMarks = (clock: CureClock, scales: Scales): readonly Item[] =>
  clock.cylinders
    .filter(({ ageDays, says }) => ageDays <= scales.time.high && says !== "not-yet-broken")
    .flatMap(({ ageDays, lowest, cured }): Item[] => {
      const centre = at(scales, ageDays, lowest);
      return [
        { kind: "circle", tag: TAG, centre, radius: 0.9, pen: "anchor", hatch: cured === "field" ? "ink" : "blank" },
      ];
    });

const legendOf = (clock: CureClock, box: Rect): readonly Item[] => {
  const y = box.y1 - 2.2;
  const marks = clock.told === "told" ? clock.curve.length + 1 : clock.curve.length;
  const each = (box.x1 - box.x0 - 15) / marks;
  const entries = clock.curve.flatMap(({ count, words: what }, i) => {
    const x = box.x0 + 13 + i * each;
    const short = what.replace(/ \(.*$|, Q.*$/, "");
    return [line(x, y - 0.6, x + 9, y - 0.6, penOf(clock, count, i)), words("note-chart", x + 10.2, y, short, SMALL)];
  });
  if (clock.told !== "told") return entries;
  const x = box.x0 + 13 + clock.curve.length * each;
  return [
    ...entries,
    { kind: "circle", tag: TAG, centre: { x: x + 1, y: y - 0.6 }, radius: 0.9, pen: "anchor", hatch: "ink" },
    words("note-chart", x + 2.8, y, "field-cured cylinder", SMALL),
  ];
};
