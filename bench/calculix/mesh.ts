import type { Floor } from "@floorworthy/engine/plates";
import type { Patch } from "./bay.ts";

/** A structured mesh of 8-node rectangles whose lines meet every zone and patch. */
export interface Mesh {
  readonly xs: readonly number[];
  readonly ys: readonly number[];
  /** node number by half-step indices, 0 at element middles */
  readonly node: (i: number, j: number) => number;
  readonly nodes: readonly { readonly id: number; readonly x: number; readonly y: number }[];
  readonly elements: readonly Element[];
}

export interface Element {
  readonly id: number;
  readonly nodes: readonly number[];
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
  readonly thickness: number;
  /** MPa */
  readonly pressure: number;
}

/** `fine` = element length near the patches, `coarse` far from them, mm. */
export const meshFor = (floor: Floor, patches: readonly Patch[], fine: number, coarse: number): Mesh => {
  const xs = lines(
    floor.outline.x0,
    floor.outline.x1,
    [...floor.zones, ...patches].flatMap(({ rect: r }) => [r.x0, r.x1]),
    patches.flatMap(({ rect: r }) => [r.x0, r.x1]),
    fine,
    coarse,
  );
  const ys = lines(
    floor.outline.y0,
    floor.outline.y1,
    [...floor.zones, ...patches].flatMap(({ rect: r }) => [r.y0, r.y1]),
    patches.flatMap(({ rect: r }) => [r.y0, r.y1]),
    fine,
    coarse,
  );
  const [nx, ny] = [2 * xs.length - 1, 2 * ys.length - 1];
  const node = (i: number, j: number): number => (i % 2 === 1 && j % 2 === 1 ? 0 : i * ny + j + 1);
  const at = (values: readonly number[], i: number): number => (values[i >> 1]! + values[(i + 1) >> 1]!) / 2;
  const nodes = [];
  for (let i = 0; i < nx; i++)
    for (let j = 0; j < ny; j++) if (node(i, j) > 0) nodes.push({ id: node(i, j), x: at(xs, i), y: at(ys, j) });
  const elements: Element[] = [];
  for (let s = 0; s + 1 < xs.length; s++)
    for (let t = 0; t + 1 < ys.length; t++) {
      const [i, j] = [2 * s, 2 * t];
      const [x0, x1, y0, y1] = [xs[s]!, xs[s + 1]!, ys[t]!, ys[t + 1]!];
      const within = ({ rect: r }: { rect: Patch["rect"] }): boolean =>
        (x0 + x1) / 2 > r.x0 && (x0 + x1) / 2 < r.x1 && (y0 + y1) / 2 > r.y0 && (y0 + y1) / 2 < r.y1;
      elements.push({
        id: elements.length + 1,
        nodes: [
          node(i, j),
          node(i + 2, j),
          node(i + 2, j + 2),
          node(i, j + 2),
          node(i + 1, j),
          node(i + 2, j + 1),
          node(i + 1, j + 2),
          node(i, j + 1),
        ],
        x0,
        x1,
        y0,
        y1,
        thickness: floor.zones.findLast(within)?.thickness ?? floor.thickness,
        pressure: patches.filter(within).reduce((sum, p) => sum + p.pressure, 0),
      });
    }
  return { xs, ys, node, nodes, elements };
};

/** Break points: all marks, and between them steps that grow from `fine` at the places to `coarse`. */
const lines = (from: number, to: number, marks: number[], places: number[], fine: number, coarse: number): number[] => {
  const sorted = [...new Set([from, to, ...marks])].sort((a, b) => a - b);
  const out = [sorted[0]!];
  for (let i = 1; i < sorted.length; i++) {
    const [a, b] = [sorted[i - 1]!, sorted[i]!];
    let x = a;
    const steps: number[] = [];
    while (x < b - 1e-9) {
      const away = Math.min(...places.map((p) => Math.min(Math.abs(p - x), Math.abs(p - Math.min(b, x + fine)))));
      const step = Math.min(coarse, fine + 0.25 * away);
      steps.push(step);
      x += step;
    }
    const scale = (b - a) / steps.reduce((sum, s) => sum + s, 0);
    for (const step of steps) out.push(out.at(-1)! + step * scale);
    out[out.length - 1] = b;
  }
  return out;
};
