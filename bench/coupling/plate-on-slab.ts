/**
 * A rigid base plate resting on a slab that bends, anchors as springs between the two:
 *
 *   plate q0 + qx x + qy y  -  slab (F f)(x, y)  =  p / bedding   where it presses (p > 0), else p = 0
 *   anchor pull T = ka × (slab - plate), never negative;   Σ f - Σ T = P and the two moments.
 *
 * F, the deflection of the slab per force on each contact cell and anchor, comes from the plate solver, one case per cell.
 * Method: guess which cells press and which anchors pull, solve the linear system, correct the guess until it stands.
 */
import type { Polygon, Rect } from "@floorworthy/engine/geometry";
import { type Floor, type FloorLoad, solveFloor } from "@floorworthy/engine/plates";
import { solveDense } from "./solve-dense.ts";

export interface Cell {
  readonly rect: Rect;
  readonly x: number;
  readonly y: number;
  readonly area: number;
}

export interface Anchor {
  readonly x: number;
  readonly y: number;
}

/** Deflection of the slab at every place (cells first, then anchors) per newton on every place. */
export interface Flexibility {
  readonly cells: readonly Cell[];
  readonly anchors: readonly Anchor[];
  readonly F: readonly (readonly number[])[];
}

export const cellsOf = (plate: Rect, across: number, along: number): Cell[] =>
  Array.from({ length: across * along }, (_, n) => {
    const [i, j] = [n % across, Math.floor(n / across)];
    const [a, b] = [(plate.x1 - plate.x0) / across, (plate.y1 - plate.y0) / along];
    const rect = { x0: plate.x0 + i * a, x1: plate.x0 + (i + 1) * a, y0: plate.y0 + j * b, y1: plate.y0 + (j + 1) * b };
    return { rect, x: rect.x0 + a / 2, y: rect.y0 + b / 2, area: a * b };
  });

export const corners = ({ x0, x1, y0, y1 }: Rect): Polygon => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

export const cellLoad = (cell: Cell, force: number): FloorLoad => ({
  kind: "pressure",
  polygon: corners(cell.rect),
  p0: force / cell.area,
  px: 0,
  py: 0,
});

export const flexibility = (
  floor: Floor,
  plate: Rect,
  cells: readonly Cell[],
  anchors: readonly Anchor[],
): Flexibility => {
  const unit = [
    ...cells.map((cell) => ({ name: "cell", loads: [cellLoad(cell, 1)] })),
    ...anchors.map(({ x, y }) => ({ name: "anchor", loads: [{ kind: "point" as const, x, y, P: 1 }] })),
  ];
  const results = solveFloor(floor, unit, { support: "both-ways", focus: [plate] });
  if ("unable" in results) throw new Error(results.reason);
  return { cells, anchors, F: results.map((r) => [...cells, ...anchors].map((place) => r.deflectionAt(place))) };
};

export interface Rest {
  /** N on every cell */
  readonly forces: readonly number[];
  /** N in every anchor */
  readonly pulls: readonly number[];
  readonly tiltX: number;
  readonly tiltY: number;
  readonly rounds: number;
}

/** P down; My presses the +x side, Mx the +y side, about the plan's origin. `rigid` leaves the slab's own bending out. */
export const restOnSlab = (
  { cells, anchors, F }: Flexibility,
  bedding: number,
  anchorStiffness: number,
  load: { P: number; Mx: number; My: number },
  slab: "bends" | "rigid" = "bends",
): Rest => {
  const places = [...cells, ...anchors];
  const n = places.length;
  const sign = (i: number): number => (i < cells.length ? 1 : -1); // an anchor pulls the slab up
  const own = (i: number): number => (i < cells.length ? 1 / (bedding * cells[i]!.area) : 1 / anchorStiffness);
  let active = places.map((place, i) => (i < cells.length ? true : place.x * load.My < 0));
  for (let rounds = 1; rounds <= 60; rounds++) {
    const on = places.flatMap((_, i) => (active[i] ? [i] : []));
    // unknowns: force of each active place, then q0, qx, qy
    const rows = on.map((i) => [
      ...on.map((j) => (slab === "rigid" ? 0 : sign(i) * sign(j) * F[j]![i]!) + (i === j ? own(i) : 0)),
      ...[1, places[i]!.x, places[i]!.y].map((v) => -sign(i) * v),
    ]);
    const balance = [(_: { x: number; y: number }) => 1, (p: { x: number }) => p.x, (p: { y: number }) => p.y].map(
      (arm) => [...on.map((i) => sign(i) * arm(places[i]!)), 0, 0, 0],
    );
    const answer = solveDense([...rows, ...balance], [...on.map(() => 0), load.P, load.My, load.Mx]);
    const q = answer.slice(-3);
    const force = new Array<number>(n).fill(0);
    on.forEach((i, k) => {
      force[i] = answer[k]!;
    });
    const gap = (i: number): number => {
      const slabThere = slab === "rigid" ? 0 : on.reduce((sum, j) => sum + sign(j) * F[j]![i]! * force[j]!, 0);
      return sign(i) * (q[0]! + q[1]! * places[i]!.x + q[2]! * places[i]!.y - slabThere);
    };
    const next = places.map((_, i) => (active[i] ? force[i]! > 0 : gap(i) > 0));
    if (next.every((a, i) => a === active[i]))
      return {
        forces: force.slice(0, cells.length),
        pulls: force.slice(cells.length),
        tiltX: q[1]!,
        tiltY: q[2]!,
        rounds,
      };
    active = next;
  }
  throw new Error("the guess of which cells press did not settle");
};
