import type { Rect } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import type { Drawing, Item } from "../drawing/drawing.ts";
import { bodyOf, framed, words } from "../sheets/frame.ts";
import type { SheetOptions } from "../sheets/sheet.ts";
import { type Column, setTable } from "../sheets/table.ts";
import type { Cell } from "../sheets/title-block.ts";

/** A record states facts: its head says so. */
export const STATES =
  "States what was done and found. It allows and judges nothing. Empty fields are filled in by hand.";

export interface Section {
  readonly heading: string;
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
  /** least height of a row, mm: large where a glove writes */
  readonly rowHeight: number;
}

/** What is asked on the left, what is known on the right; nothing known leaves a field. */
export const facts = (
  heading: string,
  rows: readonly (readonly [string, string | undefined])[],
  rowHeight = 6.2,
): Section => ({
  heading,
  columns: [
    { heading: "", share: 36 },
    { heading: "", share: 64 },
  ],
  rows: rows.map(([what, fact]) => [what, fact ?? ""]),
  rowHeight,
});

const HEADING = 2.6;

/** Sections under each other; rows share what room is left, so that blank fields are as large as the page allows. */
export const stacked = (
  sections: readonly Section[],
  box: Rect,
  tag: string,
  size = 2.3,
): readonly Item[] | undefined => {
  const set = (extra: number): { items: readonly Item[]; bottom: number } => {
    const items: Item[] = [];
    let y = box.y0;
    sections.forEach(({ heading, columns, rows, rowHeight }, i) => {
      if (heading) {
        y += HEADING * 1.5;
        items.push(words(`${tag}-heading`, box.x0, y, heading, HEADING, { lettering: "bold" }));
        y += 1;
      }
      const table = setTable(
        { tag: `${tag}-${i}`, columns, rows, size, rowHeight: rowHeight + extra },
        { ...box, y0: y },
      );
      items.push(...table.items);
      y = table.bottom + 1.2;
    });
    return { items, bottom: y };
  };
  const count = sections.reduce((n, s) => n + s.rows.length, 0);
  let made = set(0);
  if (made.bottom > box.y1) return undefined;
  for (let extra = Math.min(12, (box.y1 - made.bottom) / Math.max(1, count)); extra > 0.05; extra *= 0.8) {
    const tried = set(extra);
    if (tried.bottom <= box.y1) {
      made = tried;
      break;
    }
  }
  return made.items;
};

/** The lift and place, on every record's foot. */
export const footCells = (
  job: Job,
  date: string,
  others: readonly Cell[],
): readonly { share: number; cells: readonly Cell[] }[] => [
  { share: 62, cells: [{ caption: "Job", words: [job.title, ...(job.place ? [job.place] : [])] }] },
  { share: 46, cells: [{ caption: "Lift", words: [job.lift.name, ...(job.lift.edition ? [job.lift.edition] : [])] }] },
  ...others.map((cell) => ({ share: 40, cells: [cell] })),
  { share: 34, cells: [{ caption: "Drawn", words: [date, "sheet 1 of 1"] }] },
];

interface Page {
  readonly title: string;
  readonly sentence?: string;
  readonly lies: "upright" | "on-its-side";
  readonly cells: readonly Cell[];
}

export const page = (
  job: Job,
  { date, paper }: SheetOptions,
  { title, sentence = STATES, lies, cells }: Page,
  fill: (box: Rect) => readonly Item[] | undefined,
): readonly Drawing[] | undefined => {
  const box = bodyOf({ paper, lies });
  const items = fill({ x0: box.x0 + 3, x1: box.x1 - 3, y0: box.y0 + 1.5, y1: box.y1 - 1.5 });
  return (
    items && [
      framed(
        {
          paper,
          lies,
          title,
          sentence,
          aside: "A record, not a permission.",
          description: `${title} of ${job.lift.name} for ${job.title}. ${sentence}`,
          cells: footCells(job, date, cells),
        },
        items,
      ),
    ]
  );
};
