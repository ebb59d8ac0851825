import type { AnchorHistory } from "@floorworthy/assess/upkeep";
import type { Rect } from "@floorworthy/engine/geometry";
import type { UnitSystem } from "@floorworthy/engine/quantities";
import { fromBase } from "@floorworthy/engine/quantities";
import type { Item, Line } from "../drawing/drawing.ts";
import { widthOfText } from "../drawing/text-width.ts";
import { corners } from "../plan/extents.ts";
import { words } from "../sheets/frame.ts";
import { type Axis, axis, dayNumber, yearTicks } from "./axis.ts";

/** One scale for all panels, so that they may be compared by eye. mm, N·mm, days since 1970. */
export interface PanelScale {
  readonly from: number;
  readonly to: number;
  readonly torque: number;
  readonly movement: number;
  readonly units: UnitSystem;
}

const SMALL = 1.7;
const answerWords = {
  sound: "settles",
  "retorque-and-look": "RE-TORQUE AND LOOK",
  "out-of-service": "OUT OF SERVICE",
  "not-read": "not read",
  "not-judged": "not judged",
} as const;

const line = (x0: number, y0: number, x1: number, y1: number, pen: Line["pen"]): Item => ({
  kind: "line",
  tag: "charts",
  from: { x: x0, y: y0 },
  to: { x: x1, y: y1 },
  pen,
});

/** One anchor: torque found above, movement below, against the date. Heavy frame where it is out of service. */
export const anchorPanel = (history: AnchorHistory, box: Rect, scale: PanelScale): readonly Item[] => {
  const { anchor, answer, rounds, limit, setTo } = history;
  const [left, right] = [box.x0 + 8.5, box.x1 - 2.5];
  const top = box.y0 + 5.4;
  const bottom = box.y1 - 4;
  const split = top + (bottom - top) * 0.45;
  const time = axis(scale.from, scale.to, left, right);
  const torque = axis(0, scale.torque, split - 2.4, top + 2.4);
  const movement = axis(0, scale.movement, bottom, split + 3.6);
  const grave = answer === "out-of-service";
  const title = answerWords[answer];
  const titleSize = Math.min(2.1, 2.1 * ((box.x1 - box.x0 - 12) / widthOfText(title, 2.1, "bold")));
  return [
    { kind: "polygon", tag: "charts", points: corners(box), pen: grave ? "edge" : "rule", hatch: "none" },
    words("note-panel", box.x0 + 1.5, box.y0 + 3.6, anchor, 2.9, { lettering: "bold" }),
    words("note-panel", box.x1 - 1.5, box.y0 + 3.5, title, titleSize, {
      align: "end",
      lettering: answer === "sound" ? "regular" : "bold",
    }),
    ...frameOf(time, torque),
    ...frameOf(time, movement),
    words("charts", left + 1, top + 1.6, scale.units === "si" ? "N·m" : "lb-ft", SMALL),
    words("charts", left + 1, split + 2.8, scale.units === "si" ? "mm" : "in", SMALL),
    ...years(time, bottom),
    ...torqueMarks(history, time, torque),
    ...(setTo === undefined
      ? []
      : [
          line(left, torque.at(setTo), right, torque.at(setTo), "hidden"),
          tick(left, torque.at(setTo), figure(fromBase(setTo, scale.units === "si" ? "N·m" : "lb-ft"), 0)),
        ]),
    tick(left, torque.at(0), "0"),
    line(left, movement.at(limit), right, movement.at(limit), "hidden"),
    tick(
      left,
      movement.at(limit),
      figure(fromBase(limit, scale.units === "si" ? "mm" : "in"), scale.units === "si" ? 1 : 3),
    ),
    tick(left, movement.at(0), "0"),
    ...movementMarks(rounds, time, movement),
  ];
};

const figure = (value: number, decimals: number): string => value.toFixed(decimals).replace(/^0\./, ".");

const tick = (x: number, y: number, what: string): Item =>
  words("charts", x - 0.9, y + 0.6, what, SMALL, { align: "end" });

const frameOf = (time: Axis, value: Axis): readonly Item[] => [
  line(time.at(time.low), value.at(value.low), time.at(time.high), value.at(value.low), "thin"),
  line(time.at(time.low), value.at(value.low), time.at(time.low), value.at(value.high), "thin"),
];

const years = (time: Axis, bottom: number): readonly Item[] =>
  yearTicks(time.low, time.high, Math.max(1, Math.floor((time.at(time.high) - time.at(time.low)) / 7.5))).flatMap(
    ({ day, year }) => [
      line(time.at(day), bottom, time.at(day), bottom + 0.8, "thin"),
      words("charts", time.at(day), bottom + 2.9, String(year), SMALL, { align: "middle" }),
    ],
  );

type Rounds = AnchorHistory["rounds"];

/** Open circle: torque found. A fine stroke up to the set torque where the nut was brought back to it. */
const torqueMarks = ({ rounds, setTo }: AnchorHistory, time: Axis, torque: Axis): readonly Item[] => {
  const read = rounds.filter(({ found }) => found !== undefined);
  if (read.length === 0 && rounds.length > 0)
    return [words("charts", time.at(time.low) + 1, torque.at(torque.high / 2), "torque not written down", SMALL)];
  return read.flatMap(({ date, found, turned }): Item[] => {
    const [x, y] = [time.at(dayNumber(date)), torque.at(Math.min(found!, torque.high))];
    return [
      ...(turned !== undefined && setTo !== undefined ? [line(x, y - 0.7, x, torque.at(setTo), "thin")] : []),
      { kind: "circle", tag: "charts", centre: { x, y }, radius: 0.7, pen: "anchor", hatch: "blank" },
    ];
  });
};

/** Full circles joined by a line: take-up of the nut. Crosses: rise of the stud. */
const movementMarks = (rounds: Rounds, time: Axis, movement: Axis): readonly Item[] => {
  const at = (date: string, mm: number) => ({
    x: time.at(dayNumber(date)),
    y: movement.at(Math.max(movement.low, Math.min(mm, movement.high))),
  });
  const taken = rounds.flatMap(({ date, takeUp }) => (takeUp === undefined ? [] : [at(date, takeUp)]));
  const risen = rounds.flatMap(({ date, rise }) => (rise === undefined ? [] : [at(date, rise)]));
  const points = [{ x: time.at(time.low), y: movement.at(0) }, ...taken];
  return [
    ...(taken.length > 0 ? [{ kind: "polyline" as const, tag: "charts", points, pen: "wall" as const }] : []),
    ...taken.map((centre) => ({
      kind: "circle" as const,
      tag: "charts",
      centre,
      radius: 0.75,
      pen: "anchor" as const,
      hatch: "ink" as const,
    })),
    ...risen.flatMap(({ x, y }) => [
      line(x - 1, y - 1, x + 1, y + 1, "anchor"),
      line(x - 1, y + 1, x + 1, y - 1, "anchor"),
    ]),
  ];
};
