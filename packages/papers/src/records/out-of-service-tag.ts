import type { Assessment } from "@floorworthy/assess";
import type { Rect } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { widthOfText } from "../drawing/text-width.ts";
import { wrapText } from "../drawing/wrap-text.ts";
import { rule, standing, words } from "../sheets/frame.ts";
import type { SheetOptions } from "../sheets/sheet.ts";

const size = { letter: { width: 215.9, height: 279.4 }, a4: { width: 210, height: 297 } } as const;
const EDGE = 9;
const BAND = 20;

/** A tag for the lift, read across a shop in black and white: bars, three words, what must not be done, blank lines for a glove. */
export const outOfServiceTag = (
  job: Job,
  assessment: Assessment,
  { date, paper }: SheetOptions,
): readonly Drawing[] => {
  const { width, height } = size[paper];
  const [x0, x1] = [EDGE, width - EDGE];
  const across = x1 - x0;
  const big = (y: number, what: string): { items: Item[]; bottom: number } => {
    const em = Math.min(60, (across - 8) / widthOfText(what, 1, "bold"));
    return {
      items: [words("note-tag-heading", width / 2, y + em * 0.78, what, em, { align: "middle", lettering: "bold" })],
      bottom: y + em * 0.99,
    };
  };
  const first = big(EDGE + BAND + 16, "OUT OF");
  const second = big(first.bottom, "SERVICE");
  const third = big(second.bottom + 1, "DO NOT LIFT  ·  DO NOT REMOVE");
  const why =
    assessment.outcome === "out-of-service" || assessment.stops.length > 0 ? (assessment.reasons[0] ?? "") : "";
  const top = third.bottom + 3;
  const bottom = height - EDGE - BAND - 8;
  return [
    {
      title: `Out of service: ${job.lift.name}`,
      description: `Tag: the lift ${job.lift.name} is out of service and must not be used. Lines for what was found, when, with what load, who locked it and who may take the tag off.`,
      width,
      height,
      items: [
        ...bars({ x0, x1, y0: EDGE, y1: EDGE + BAND }),
        ...bars({ x0, x1, y0: height - EDGE - BAND, y1: height - EDGE }),
        {
          kind: "circle",
          tag: "hole",
          centre: { x: width / 2, y: EDGE + BAND + 9 },
          radius: 5,
          pen: "frame",
          hatch: "blank",
        },
        words("note-hole", width / 2 + 8, EDGE + BAND + 10, "hang here, at the controls, with the lock", 2.6),
        ...first.items,
        ...second.items,
        ...third.items,
        ...linesOf(job, why, date, { x0, x1, y0: top, y1: bottom }),
        ...wrapText(standing, 1.9, "regular", across).map((line, i) =>
          words("note-standing", width / 2, bottom + 4.6 + i * 2.3, line, 1.9, { align: "middle" }),
        ),
      ],
    },
  ];
};

/** Slanting bars, black and white. */
const bars = ({ x0, x1, y0, y1 }: Rect): readonly Item[] => {
  const tall = y1 - y0;
  const step = (x1 - x0 - tall) / 9;
  return [
    ...Array.from({ length: 5 }, (_, i): Item => {
      const x = x0 + 2 * i * step;
      return {
        kind: "polygon",
        tag: "bars",
        points: [
          { x, y: y1 },
          { x: x + tall, y: y0 },
          { x: x + tall + step, y: y0 },
          { x: x + step, y: y1 },
        ],
        pen: "thin",
        hatch: "ink",
      };
    }),
    rule(x0, y0, x1, y0, "frame"),
    rule(x0, y1, x1, y1, "frame"),
  ];
};

const linesOf = (job: Job, why: string, date: string, { x0, x1, y0, y1 }: Rect): readonly Item[] => {
  const fields: readonly (readonly [string, string])[] = [
    ["Lift", job.lift.name + (job.installation?.serial ? `, serial ${job.installation.serial}` : "")],
    ["What was found", why],
    ["", ""],
    ["When, and who found it", ""],
    ["Load on it then", ""],
    ["Lowered, unloaded, locked by", ""],
    ["Photographs kept at", ""],
    ["Taken off only by (name), after", ""],
  ];
  const row = (y1 - y0) / fields.length;
  return fields.flatMap(([caption, value], i): Item[] => {
    const y = y0 + (i + 1) * row;
    const lines = value ? wrapText(value, 3.2, "bold", x1 - x0 - 66) : [];
    return [
      ...(caption ? [words("note-tag", x0, y - 1.6, caption, 3.4, { lettering: "bold" })] : []),
      ...lines
        .slice(0, 2)
        .map((line, k) => words("note-tag", x0 + 64, y - 1.6 - (Math.min(2, lines.length) - 1 - k) * 3.9, line, 3.2)),
      rule(x0 + 62, y, x1, y),
      ...(i === fields.length - 1 ? [words("note-tag", x1, y0 - 1, `Printed ${date}`, 2.2, { align: "end" })] : []),
    ];
  });
};
