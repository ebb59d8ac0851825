/** Cuts of the grid as lines of the plan: only where they run through concrete, and joined where they meet end to end. */
import type { GridModel } from "./grid-model.ts";
import type { LineAxis } from "./joint-plan.ts";
import type { Cut } from "./partition.ts";

/** A line of constant `at`, from..to. */
export interface CutLine {
  readonly axis: LineAxis;
  readonly at: number;
  readonly from: number;
  readonly to: number;
}

export const cutLines = (model: GridModel, cuts: readonly Cut[]): readonly CutLine[] => {
  const pieces = cuts.flatMap((cut) => stretches(model, cut));
  const sorted = pieces.toSorted((p, q) => p.axis.localeCompare(q.axis) || p.at - q.at || p.from - q.from);
  const lines: CutLine[] = [];
  for (const piece of sorted) {
    const last = lines.at(-1);
    if (last && last.axis === piece.axis && last.at === piece.at && piece.from <= last.to) {
      lines[lines.length - 1] = { ...last, to: Math.max(last.to, piece.to) };
    } else lines.push(piece);
  }
  return lines;
};

const stretches = ({ xs, ys, x, y }: GridModel, { axis, at, box }: Cut): readonly CutLine[] => {
  const [sums, lines, across, low, high] = axis === "x" ? [x, xs, ys, box.j0, box.j1] : [y, ys, xs, box.i0, box.i1];
  const base = at * across.length;
  const found: CutLine[] = [];
  for (let j = low; j < high; j++) {
    if (sums.length[base + j + 1]! === sums.length[base + j]!) continue;
    found.push({ axis, at: lines[at]!, from: across[j]!, to: across[j + 1]! });
  }
  return found;
};
