import type { Assessment } from "@floorworthy/assess";
import { type Upkeep, upkeepOf } from "@floorworthy/assess/upkeep";
import type { Rect } from "@floorworthy/engine/geometry";
import { type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { anchorMarks } from "../print/anchor-marks.ts";
import { bodyOf, framed, rule, words } from "./frame.ts";
import { standsLoose } from "./refusal.ts";
import { setNotes } from "./set-notes.ts";
import type { Sheet, SheetOptions } from "./sheet.ts";
import { anchorMap } from "./torque-card-map.ts";
import { reasonNotes, roundNotes } from "./torque-card-notes.ts";
import { crosswise } from "./torque-card-order.ts";
import { roundTable } from "./torque-card-table.ts";

const place = "torque card";

/**
 * One page for a round of the nuts: the order, what was found last, and fields for what is found today. Refused under a
 * stop, where nothing is re-torqued and nothing lifted, and where no anchor has a name.
 */
const torqueCard = (job: Job, assessment: Assessment, { date, paper }: SheetOptions): readonly Drawing[] | Unable => {
  const loose = standsLoose(place, job);
  if (loose) return loose;
  const { stops, layout } = assessment;
  if (stops.length > 0)
    return unable(
      place,
      `No card for a round while a stop stands. ${stops.map(({ reason, next }) => `${reason} ${next}`).join(" ")}`,
    );
  const upkeep = upkeepOf(job, date);
  const order = orderOf(assessment, upkeep);
  if (order.length === 0)
    return unable(place, "The holes of the base plate have no names yet: nobody could tell the nuts apart.");
  const box = bodyOf({ paper, lies: "upright" });
  const mapped = layout.bases.length > 0 && layout.bases.some(({ anchors }) => anchors.length > 0);
  const top = mapped ? box.y0 + 50 : box.y0 + 1.5;
  const marks = anchorMarks(layout.bases);
  const table = roundTable(job, upkeep, order, marks, date, { x0: box.x0 + 2, x1: box.x1 - 2, y0: top, y1: box.y1 });
  const [left, right] = columnsBelow({ ...box, y0: table.bottom + 2.5 });
  const doing = setNotes(roundNotes(upkeep, job.units), [left]);
  const knowing = setNotes(reasonNotes(upkeep, job.units), [right]);
  if (!doing || !knowing) return unable(place, "There are too many anchors for one readable page.");
  return [
    framed(
      {
        paper,
        lies: "upright",
        title: "Card for a round of the nuts",
        sentence: upkeep.answer === "no-readings" ? "First round: nothing has been read yet." : upkeep.sentence,
        aside: "Fill in by hand, then write it into the job.",
        description: `Anchors in order: ${order.join(", ")}. ${upkeep.sentence}`,
        cells: [
          { share: 60, cells: [{ caption: "Job", words: [job.title, ...(job.place ? [job.place] : [])] }] },
          {
            share: 42,
            cells: [
              { caption: "Round on (date)", words: [] },
              { caption: "By", words: [] },
            ],
          },
          {
            share: 42,
            cells: [
              { caption: "Torque wrench, checked on", words: [] },
              { caption: "Temperature", words: [] },
            ],
          },
          {
            share: 46,
            cells: [
              { caption: "Planned for", words: [upkeep.next?.date ?? "not known"] },
              { caption: "Printed", words: [date] },
            ],
          },
        ],
      },
      [
        ...(mapped ? anchorMap(layout.bases, order, marks, { ...box, y1: top - 1.5 }) : []),
        ...table.items,
        ...doing.items,
        ...knowing.items,
        ...seenToday(knowing.items, right),
      ],
    ),
  ];
};

/** Base by base, crosswise; anchors without a place on the plan follow in the order of their names. */
const orderOf = ({ layout }: Assessment, { anchors }: Upkeep): readonly string[] => {
  const placed = layout.bases.flatMap(crosswise);
  return [...placed, ...anchors.map(({ anchor }) => anchor).filter((name) => !placed.includes(name))];
};

const columnsBelow = (box: Rect): readonly [Rect, Rect] => {
  const middle = (box.x0 + box.x1) / 2;
  return [
    { x0: box.x0 + 2.5, x1: middle - 2, y0: box.y0, y1: box.y1 - 1.5 },
    { x0: middle + 2, x1: box.x1 - 2.5, y0: box.y0, y1: box.y1 - 1.5 },
  ];
};

const LINE = 7;

/** Lines to write on, from under the notes to the foot. */
const seenToday = (above: readonly Item[], box: Rect): readonly Item[] => {
  const top = Math.max(box.y0, ...above.map((item) => (item.kind === "text" ? item.at.y : 0))) + 6;
  const count = Math.floor((box.y1 - top) / LINE);
  return count < 1
    ? []
    : [
        words(
          "note-seen-heading",
          box.x0,
          top,
          "Seen today: cracks, gaps, rust, lean; length and width of each crack",
          2.3,
          {
            lettering: "bold",
          },
        ),
        ...Array.from({ length: count }, (_, i) => rule(box.x0, top + (i + 1) * LINE, box.x1, top + (i + 1) * LINE)),
      ];
};

export const torqueCardSheet: Sheet = {
  name: "torque-card",
  title: "Card for a round of the nuts",
  reader: "for the person with the torque wrench",
  draw: torqueCard,
};
