/**
 * One of a set of mobile columns: load and column ride on four feet, most of it on the front pair beneath the fork.
 *
 *   front pair = share × (φ W1 + Wc),  each front foot half of it; the rear pair has the rest
 *
 * A share of 0.7 to 0.8 on the front pair is common practice, no source; with the place of load and column known it
 * follows from the lever rule instead. Feet carry vertical load only.
 */
import { shown, type Term, type Unable, unable } from "../quantities/index.ts";
import { resting, type SupportCase } from "./support-case.ts";

export interface MobileColumn {
  /** W1: rated load of one column, N */
  readonly weight: number;
  readonly dynamicFactor: number;
  readonly columnWeight: number;
  /** between the feet, across and along the fork, mm */
  readonly trackWidth: number;
  readonly wheelBase: number;
  /** share on the front pair, 0.8 unless given; or where load and column stand behind the front feet, mm */
  readonly front?: { readonly share: number } | { readonly loadBehind: number; readonly columnBehind: number };
}

/** Axes of the column: x across, y along the fork; the front feet stand at −y. */
export const mobileColumnCases = (column: MobileColumn): readonly SupportCase[] | Unable => {
  const lifted = column.dynamicFactor * column.weight;
  const total = lifted + column.columnWeight;
  const front = column.front ?? { share: 0.8 };
  const share =
    "share" in front
      ? front.share
      : 1 - (lifted * front.loadBehind + column.columnWeight * front.columnBehind) / (total * column.wheelBase);
  if (!(share >= 0 && share <= 1)) return unable("mobile column", "The column tips: its load stands outside its feet.");
  const term: Term = {
    symbol: "P_front",
    words: "load of one front foot",
    value: (share * total) / 2,
    unit: "N",
    clause: "share" in front ? "common practice, no source" : "lever rule",
    formula: "share × (φ W1 + Wc) / 2",
    worked: `${shown(share)} × (${shown(lifted)} + ${shown(column.columnWeight)}) / 2`,
  };
  const foot = (id: string, x: number, y: number, part: number) => ({
    id,
    x: (x * column.trackWidth) / 2,
    y: (y * column.wheelBase) / 2,
    reaction: resting((part * total) / 2),
  });
  return [
    {
      id: "rated",
      name: "rated load on this column",
      standing: "design",
      supports: [
        foot("front-left", -1, -1, share),
        foot("front-right", 1, -1, share),
        foot("rear-left", -1, 1, 1 - share),
        foot("rear-right", 1, 1, 1 - share),
      ],
      terms: [term],
    },
  ];
};
