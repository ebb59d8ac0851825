import { governingLoads, type Referral } from "@floorworthy/assess/referral";
import type { Rect } from "@floorworthy/engine/geometry";
import { capital, fromBase, printNumber, type UnitSystem } from "@floorworthy/engine/quantities";
import type { Item } from "../../drawing/drawing.ts";
import { wrapText } from "../../drawing/wrap-text.ts";
import { words } from "../frame.ts";
import { setTable } from "../table.ts";

const SIZE = 1.95;

/** Three significant figures, none invented. */
const figure = (value: number): string =>
  printNumber(Math.abs(value) < 1e-9 ? 0 : Number(value.toPrecision(3)), Math.abs(value) >= 100 ? 0 : 1);

/** The governing loads of the bases, or in words why there are none; with the published weights. */
export const loadsTable = (
  { loads }: Referral,
  units: UnitSystem,
  box: Rect,
): { readonly items: readonly Item[]; readonly bottom: number } => {
  const force = units === "si" ? "kN" : "lb";
  const moment = units === "si" ? "kN·m" : "kip-in";
  const weights = loads.weights.map(({ words: what, value, unit }) => `${what} ${figure(value)} ${unit}`).join("; ");
  const said = [
    `From: ${loads.from}. ${loads.words}${weights ? ` ${capital(weights)}.` : ""}`,
    ...(loads.cases.length > 0
      ? [
          "x from the left wall, y from the back wall toward the door; resultant of a base at x = My/P, y = Mx/P from its column. Every case with its workings is in the data file.",
        ]
      : []),
  ].flatMap((text) => wrapText(text, SIZE, "regular", box.x1 - box.x0 - 4));
  const lines = [
    words("note-loads-heading", box.x0 + 2, box.y0 + 3.4, "Loads on the floor", 2.4, { lettering: "bold" }),
    ...said.map((line, i) => words("note-loads", box.x0 + 2, box.y0 + 6.4 + i * SIZE * 1.2, line, SIZE)),
  ];
  const top = box.y0 + 5.4 + said.length * SIZE * 1.2;
  const rows = governingLoads(loads.cases).map(({ caseName, base, governs }) => [
    caseName,
    base.side,
    ...[base.P].map((n) => figure(fromBase(n, force))),
    ...[base.Mx, base.My].map((n) => figure(fromBase(n, moment))),
    ...[base.Vx, base.Vy].map((n) => figure(fromBase(n, force))),
    governs.join(", "),
  ]);
  if (rows.length === 0) return { items: lines, bottom: top + 1 };
  const number = (heading: string) => ({ heading, share: 16, align: "end" as const });
  const table = setTable(
    {
      tag: "note-loads",
      columns: [
        { heading: "Case", share: 62 },
        { heading: "Base", share: 11 },
        number(`P, ${force}`),
        number(`Mx, ${moment}`),
        number(`My, ${moment}`),
        number(`Vx, ${force}`),
        number(`Vy, ${force}`),
        { heading: "Largest", share: 34 },
      ],
      rows,
      size: SIZE,
      rowHeight: 0,
    },
    { ...box, y0: top + 0.5 },
  );
  return { items: [...lines, ...table.items], bottom: table.bottom };
};
