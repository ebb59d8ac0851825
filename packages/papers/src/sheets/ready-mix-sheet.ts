/** One page: what the dispatcher reads out of, and what the crew has ready before the truck comes. */
import type { Assessment } from "@floorworthy/assess";
import { type Order, orderFor } from "@floorworthy/assess/order";
import type { Rect } from "@floorworthy/engine/geometry";
import { isUnable, printNumber, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { wrapText } from "../drawing/wrap-text.ts";
import { sizeOf } from "../plan/zones.ts";
import { printLength, printVolume } from "../print/measure.ts";
import { bodyOf, framed, rule, words } from "./frame.ts";
import { type Note, note } from "./note.ts";
import { amountWords } from "./order-notes.ts";
import { setNotes } from "./set-notes.ts";
import type { Sheet, SheetOptions } from "./sheet.ts";
import { setTable, type Table } from "./table.ts";

const GAP = 4;

/** The one figure the dispatcher must hear. */
const bigFigure = (order: Order, box: Rect): readonly Item[] => {
  const loads = order.loads.value === 1 ? "one load" : `${order.loads.value} loads`;
  const strength = order.mix.find(({ id }) => id === "strength")?.words ?? "";
  return [
    words("note-order", box.x0 + 2, box.y0 + 8, `Order ${amountWords(order.ordered, "")}`, 6.2, { lettering: "bold" }),
    words("note-order", box.x0 + 2, box.y0 + 13, `${loads}, ${strength} at 28 days`, 2.8),
    ...wrapText(order.bags.sentence, 2.1, "regular", (box.x1 - box.x0) * 0.46).map((line, i) =>
      words("note-order", box.x0 + (box.x1 - box.x0) * 0.52, box.y0 + 4.4 + i * 2.7, line, 2.1),
    ),
    rule(box.x0, box.y0 + 16, box.x1, box.y0 + 16),
  ];
};

const mixTable = ({ mix }: Order, size: number): Table => ({
  tag: "note-mix",
  size,
  rowHeight: 0,
  columns: [
    { heading: "Mix for the ticket", share: 34 },
    { heading: "", share: 46 },
    { heading: "On whose word", share: 40 },
  ],
  rows: mix.map(({ what, words: said, basis }) => [what, said, basis]),
});

const volumeTable = (order: Order, { units }: Job, size: number): Table => {
  const waste = order.withWaste.from?.find(({ symbol }) => symbol === "w")?.value ?? 0;
  return {
    tag: "note-volumes",
    size,
    rowHeight: 0,
    columns: [
      { heading: "Concrete by parts", share: 30 },
      { heading: "Size", share: 44 },
      { heading: "Thick", share: 16, align: "end" },
      { heading: "Volume", share: 24, align: "end" },
    ],
    rows: [
      ...order.parts.map(({ name, outline, area, thickness, volume }) => [
        name,
        outline
          ? sizeOf(outline, units)
          : units === "si"
            ? `${(area / 1e6).toFixed(1)} m²`
            : `${Math.round(area / 92903.04)} sq ft`,
        printLength(thickness ?? Number.NaN, units),
        printVolume(volume ?? Number.NaN, units),
      ]),
      ["Net", "", "", amountWords(order.net, "")],
      [`With ${printNumber(waste, 1)} % waste`, "", "", amountWords(order.withWaste, "")],
      ["To order", "rounded up to what is sold", "", amountWords(order.ordered, "")],
    ],
  };
};

const listTable = (order: Order, size: number, notes: "all" | "short"): Table => ({
  tag: "note-list",
  size,
  rowHeight: 0,
  columns: [
    { heading: "To have ready", share: 42 },
    { heading: "Takes", share: 24, align: "end" },
    { heading: "Get", share: 38, align: "end" },
    { heading: "Note", share: 96 },
    { heading: "On site", share: 14 },
  ],
  rows: order.lines
    .filter(({ group }) => group !== "concrete")
    .map(({ what, takes, buy, sold, note: said }) => [
      what,
      amountWords(takes, ""),
      amountWords(buy, sold),
      notes === "all" ? said : (said.split(/(?<=\.) /)[0] ?? ""),
      "",
    ]),
});

/** Filled in by hand, one row a load. */
const loadTable = (order: Order): Table => ({
  tag: "note-loads",
  size: 1.9,
  rowHeight: 6,
  columns: [
    "Load",
    "Ticket no.",
    "Water met cement",
    "Arrived",
    "Slump",
    "Emptied",
    "Volume",
    "Water added",
    "Cylinders",
  ].map((heading, i) => ({ heading, share: i === 0 ? 8 : 14 })),
  rows: Array.from({ length: Math.min(8, Math.max(2, order.loads.value + 1)) }, (_, i) => [
    String(i + 1),
    ...Array.from({ length: 8 }, () => ""),
  ]),
});

const tickNotes: readonly Note[] = [
  note(
    "Ask the dispatcher",
    [
      "Time of the first truck and minutes between loads; who may hold the last load until it is called in.",
      "Can the chute reach, or is a pump or a buggy needed? Way in: width, wires, slope, soft ground.",
      "Where the truck may wash out.",
    ],
    "box",
  ),
  note(
    "When the truck is there",
    [
      "Ticket against the mix above, before anything is discharged. Time on the ticket written down.",
      "Slump looked at; no water added. Cylinders cast, marked and left where they will not be knocked.",
      "Pads first, then the slab, in one go. Last load called in by what is still open.",
    ],
    "box",
  ),
];

const body = (order: Order, job: Job, box: Rect): readonly Item[] | undefined => {
  for (const [size, notes] of [
    [2.2, "all"],
    [2, "all"],
    [1.85, "all"],
    [1.85, "short"],
    [1.75, "short"],
  ] as const) {
    const x = { x0: box.x0 + 2, x1: box.x1 - 2, y1: box.y1 };
    const middle = (x.x0 + x.x1) / 2;
    const top = box.y0 + 18;
    const mix = setTable(mixTable(order, size), { ...x, y0: top, x1: middle - GAP / 2 });
    const volumes = setTable(volumeTable(order, job, size), { ...x, y0: top, x0: middle + GAP / 2 });
    const list = setTable(listTable(order, size, notes), { ...x, y0: Math.max(mix.bottom, volumes.bottom) + GAP });
    const below = list.bottom + GAP;
    const loads = setTable(loadTable(order), { ...x, y0: 0 });
    const floor = box.y1 - 2 - loads.bottom;
    if (below > floor - 20) continue;
    const column = (x0: number, x1: number) => [{ x0, x1, y0: below, y1: floor - 2 }];
    const ticks = setNotes(tickNotes, column(x.x0 + 1, middle - GAP / 2));
    const cares = setNotes([note("Look out", order.warnings)], column(middle + GAP / 2, x.x1 - 1));
    if (ticks && cares && (Math.min(ticks.size, cares.size) >= 1.9 || size <= 1.85))
      return [
        ...bigFigure(order, box),
        ...mix.items,
        ...volumes.items,
        ...list.items,
        ...ticks.items,
        ...cares.items,
        ...setTable(loadTable(order), { ...x, y0: floor }).items,
      ];
  }
  return undefined;
};

const draw = (job: Job, assessment: Assessment, { date, paper }: SheetOptions): readonly Drawing[] | Unable => {
  if (assessment.outcome === "hold")
    return unable("ready-mix order", `Nothing is ordered before the missing facts are known. ${assessment.sentence}`);
  const order = orderFor(job, assessment);
  if (isUnable(order)) return order;
  const frame = { paper, lies: "upright", foot: 26 } as const;
  const items = body(order, job, bodyOf(frame));
  if (!items) return unable("ready-mix order", "There is too much to order for one readable page.");
  const drawnFor =
    order.pours === "job"
      ? ""
      : ` Sized as the remedy "${assessment.remedies.find(({ id }) => id === order.pours)?.title ?? order.pours}": draw it in the job before it is ordered.`;
  return [
    framed(
      {
        ...frame,
        title: "Ready-mix order",
        sentence: `For ${job.title}.${drawnFor}`,
        aside: "Quantities, no drawing: see the contractor's sheet.",
        description: `Order ${amountWords(order.ordered, "")} for ${job.title}: ${order.mix.map(({ what, words: said }) => `${what} ${said}`).join("; ")}.`,
        cells: [
          {
            share: 60,
            cells: [
              { caption: "Deliver to", words: job.place ? [job.place] : [] },
              { caption: "Ordered by, telephone", words: [] },
            ],
          },
          {
            share: 46,
            cells: [
              { caption: "Day of the pour", words: job.pour?.date ? [job.pour.date] : [] },
              { caption: "First truck at", words: [] },
            ],
          },
          {
            share: 46,
            cells: [
              { caption: "Plant, order no.", words: [] },
              { caption: "Pump or chute", words: [] },
            ],
          },
          {
            share: 44,
            cells: [
              { caption: "Taken by", words: [] },
              { caption: "Printed", words: [date] },
            ],
          },
        ],
      },
      items,
    ),
  ];
};

export const readyMixSheet: Sheet = {
  name: "ready-mix",
  title: "Ready-mix order",
  reader: "for the dispatcher and the crew",
  draw,
};
