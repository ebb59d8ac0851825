/**
 * `k` on top of untreated granular base, pci, by k below and thickness of base: PCA, EB109P (1984) [pca-1984], in a table
 * that circulates; between its points linearly in k and in thickness, from no base (0 in) on.
 */
import { fromBase, toBase } from "../quantities/index.ts";

const THICKNESS = [0, 4, 6, 9, 12]; // in
const BELOW = [50, 100, 200, 300]; // pci
const TABLE = [
  [50, 65, 75, 85, 110],
  [100, 130, 140, 160, 190],
  [200, 220, 230, 270, 320],
  [300, 320, 330, 370, 430],
];

/** @param k - below the base, N/mm³ (held to 50-300 pci) @param thickness - of the base, mm (held to 12 in) @returns N/mm³ */
export const subgradeOnBase = (k: number, thickness: number): number => {
  const [i, u] = place(BELOW, fromBase(k, "pci"));
  const [j, v] = place(THICKNESS, fromBase(thickness, "in"));
  const at = (r: number) => TABLE[r]![j]! * (1 - v) + TABLE[r]![j + 1]! * v;
  const gain = (at(i) - BELOW[i]!) * (1 - u) + (at(i + 1) - BELOW[i + 1]!) * u;
  return k + toBase(gain, "pci");
};

/** Interval of a rising list and the share of it, held to the list's ends. */
const place = (list: readonly number[], x: number): readonly [number, number] => {
  const held = Math.min(Math.max(x, list[0]!), list[list.length - 1]!);
  let i = 0;
  while (i < list.length - 2 && held > list[i + 1]!) i++;
  return [i, (held - list[i]!) / (list[i + 1]! - list[i]!)];
};
