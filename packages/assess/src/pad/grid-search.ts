/**
 * The cheapest point of a grid of designs, proved: at the end every cheaper point has been judged, or lies in a box that a
 * judged point has closed.
 *
 * A judged failure says what could mend it, and so closes a box: "larger" closes every point that is nowhere larger and no
 * deeper; "deeper" every point no deeper; "shallower" every point nowhere larger and no shallower (thin concrete beside a stiff pad); "other" itself alone.
 * That is only true where the failure is monotone, so some closed points are judged all the same; one that meets the
 * demands after all opens everything again and the rest is judged one by one, cheapest first.
 *
 * Method: of the open points cheaper than the best so far, the roomiest in the cheaper half of the prices.
 * Cost: a few dozen judgements on grids of ten thousand points.
 */

export type Mended = "larger" | "deeper" | "shallower" | "other";
export type Judged = { readonly meets: true } | { readonly meets: false; readonly mendedBy: Mended };

export interface GridTask {
  /** sizes in plan, twice, and depths, each rising */
  readonly counts: readonly [number, number, number];
  /** money; Infinity where there is no such design */
  readonly cost: (i: number, j: number, k: number) => number;
  readonly judge: (i: number, j: number, k: number) => Judged;
  /** points dearer than this are of no interest */
  readonly below?: number;
  /** how many closed points are judged all the same */
  readonly audits?: number;
  /** most points to judge one by one when the boxes do not hold */
  readonly atMost?: number;
}

export interface GridFound {
  readonly best: { readonly at: readonly [number, number, number]; readonly cost: number } | undefined;
  readonly judgements: number;
  /** points cheaper than the best, all closed */
  readonly closed: number;
  /** "unproved": an audit found a hole in the boxes and too many points were left to judge one by one */
  readonly way: "boxes" | "one by one" | "unproved";
}

/** Yields the number of judgements so far, after each. */
export function* searchGrid(task: GridTask): Generator<number, GridFound> {
  const [na, nb, nd] = task.counts;
  const n = na * nb * nd;
  const cost = new Float64Array(n);
  for (let i = 0, at = 0; i < na; i++)
    for (let j = 0; j < nb; j++) for (let k = 0; k < nd; k++) cost[at++] = task.cost(i, j, k);
  const split = (at: number): [number, number, number] => [
    Math.floor(at / (nb * nd)),
    Math.floor(at / nd) % nb,
    at % nd,
  ];
  const open = new Uint8Array(n).fill(1);
  const known = new Map<number, Judged>();
  let best: { at: number; cost: number } | undefined;
  let way: GridFound["way"] = "boxes";
  const limit = (): number =>
    Math.min(best?.cost ?? Number.POSITIVE_INFINITY, task.below ?? Number.POSITIVE_INFINITY) - 1e-9;

  const judge = (at: number): Judged => {
    const judged = task.judge(...split(at));
    known.set(at, judged);
    open[at] = 0;
    if (judged.meets && cost[at]! < limit()) best = { at, cost: cost[at]! };
    return judged;
  };
  const close = (at: number, mendedBy: Mended): void => {
    if (mendedBy === "other" || way !== "boxes") return;
    const [ia, ib, id] = split(at);
    const [from, to] = mendedBy === "shallower" ? [id, nd - 1] : [0, id];
    const [toI, toJ] = mendedBy === "deeper" ? [na - 1, nb - 1] : [ia, ib];
    for (let i = 0; i <= toI; i++)
      for (let j = 0; j <= toJ; j++) for (let k = from; k <= to; k++) open[(i * nb + j) * nd + k] = 0;
  };
  const next = (): number => {
    const most = limit();
    let [low, high] = [Number.POSITIVE_INFINITY, -1];
    for (let at = 0; at < n; at++)
      if (open[at] && cost[at]! < most) {
        low = Math.min(low, cost[at]!);
        high = Math.max(high, cost[at]!);
      }
    if (high < 0) return -1;
    const target = known.size === 0 ? high : way !== "boxes" ? low : (low + high) / 2;
    let [chosen, room] = [-1, -1];
    for (let at = 0; at < n; at++) {
      if (!open[at] || cost[at]! >= most || cost[at]! > target) continue;
      const [i, j, k] = split(at);
      const size = (i + 1) * (j + 1) * (k + 1);
      if (size > room) [chosen, room] = [at, size];
    }
    return chosen;
  };

  for (let at = next(); at >= 0; at = next()) {
    const judged = judge(at);
    if (!judged.meets) close(at, judged.mendedBy);
    yield known.size;
    if (next() < 0 && way === "boxes" && audit()) {
      const left = [...cost.keys()].filter((p) => !known.has(p) && cost[p]! < limit());
      way = left.length <= (task.atMost ?? 200) ? "one by one" : "unproved";
      if (way === "one by one") for (const p of left) open[p] = 1;
    }
  }
  const shown = best as { at: number; cost: number } | undefined;
  const most = limit();
  let closed = 0;
  for (let at = 0; at < n; at++) if (cost[at]! < most) closed++;
  return {
    best: shown && { at: split(shown.at), cost: shown.cost },
    judgements: known.size,
    closed,
    way,
  };

  /** Judges closed points spread over the cheaper ones; true when one meets the demands after all. */
  function audit(): boolean {
    const most = limit();
    const closedPoints = [...cost.keys()]
      .filter((at) => !known.has(at) && cost[at]! < most)
      .sort((p, q) => cost[q]! - cost[p]!);
    const wanted = Math.min(task.audits ?? 0, closedPoints.length);
    for (let a = 0; a < wanted; a++) {
      const at = closedPoints[Math.floor((a * closedPoints.length) / wanted)]!;
      if (judge(at).meets) return true;
    }
    return false;
  }
}
