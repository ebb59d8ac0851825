import { type SurveyPlan, termWords } from "@floorworthy/assess/survey";
import type { Rect } from "@floorworthy/engine/geometry";
import { isUnable, printFraction, type Term, toBase } from "@floorworthy/engine/quantities";
import type { Item } from "../../drawing/drawing.ts";
import { rule, words } from "../frame.ts";

const TAG = "bit";
/** Paper beyond the mark for tape and shank, mm. */
const BEYOND = 17;

/** Height the figure takes, mm of paper. */
export const BIT_HEIGHT = 22.5;

const mmOf = ({ value, unit }: Term): number => toBase(value, unit);

/** The bit with its tape, full size where the paper is wide enough, so that the bit can be laid on it. */
export const bitFigure = ({ mark, bit }: SurveyPlan, box: Rect): readonly Item[] => {
  if (isUnable(mark)) return [words("note-bit", box.x0 + 2, box.y0 + 5, `Bit mark: ${mark.reason}`, 2.2)];
  const width = box.x1 - box.x0 - 6;
  const k = mmOf(mark) + BEYOND <= width ? 1 : 1 / Math.ceil((mmOf(mark) + BEYOND) / width);
  const [tip, middle] = [box.x0 + 3, box.y0 + 10.8];
  const half = (mmOf(bit) * k) / 2;
  const tape = tip + mmOf(mark) * k;
  const end = tape + BEYOND - 1;
  const parts = partsOf(mark);
  const size = k === 1 ? "full size when printed at 100 %: lay the bit here, tip at the left line" : "not full size";
  return [
    words(
      "note-bit-heading",
      box.x0 + 2,
      box.y0 + 4,
      `Mark on the bit: ${termWords(mark)} from its tip (${size}, tape at the right line)`,
      2.5,
      { lettering: "bold" },
    ),
    {
      kind: "polygon",
      tag: TAG,
      points: [
        { x: tip, y: middle },
        { x: tip + 1.2 * half, y: middle - half },
        { x: end, y: middle - half },
        { x: end, y: middle + half },
        { x: tip + 1.2 * half, y: middle + half },
      ],
      pen: "wall",
      hatch: "diagonal",
    },
    {
      kind: "polygon",
      tag: TAG,
      points: [
        { x: tape, y: middle - half - 0.8 },
        { x: tape + 5, y: middle - half - 0.8 },
        { x: tape + 5, y: middle + half + 0.8 },
        { x: tape, y: middle + half + 0.8 },
      ],
      pen: "wall",
      hatch: "ink",
    },
    ...[tip, tape].map((x) => rule(x, middle - half - 2, x, middle + half + 2, "frame")),
    words(TAG, tape + 6, middle + half + 3.4, "tape", 2),
    ...dimensionsFrom(parts, tape, middle + half, k),
  ];
};

interface Stretch {
  readonly mm: number;
  readonly words: string;
}

/** From the floor's surface down: what is asked, the allowance, what must be seen, what rounding adds to it. */
const partsOf = (mark: Term): readonly Stretch[] => {
  const from = mark.from ?? [];
  const asked = from.filter(({ symbol }) => symbol.startsWith("t_"));
  const most = asked.reduce<Term | undefined>((best, t) => (!best || t.value > best.value ? t : best), undefined);
  const allowance = from.find(({ symbol }) => symbol === "a");
  if (!most || !allowance) return [];
  const rest = mmOf(mark) - mmOf(most) - mmOf(allowance);
  return [
    { mm: mmOf(most), words: `${termWords(most)} asked of the concrete` },
    { mm: mmOf(allowance), words: termWords(allowance) },
    {
      mm: rest,
      words: `${mark.unit === "in" ? printFraction(rest / 25.4, 8) : Math.round(rest)} ${mark.unit} to see below`,
    },
  ];
};

const dimensionsFrom = (parts: readonly Stretch[], tape: number, base: number, k: number): readonly Item[] => {
  let x = tape;
  return parts.map(({ mm, words: figures }, i): Item => {
    const from = { x: x - mm * k, y: base };
    const to = { x, y: base };
    x -= mm * k;
    return {
      kind: "dimension",
      tag: TAG,
      axis: "x",
      from,
      to,
      base,
      offsetPaper: i === 1 ? 6 : 3.4,
      words: figures,
      row: 0,
      size: 2,
    };
  });
};
