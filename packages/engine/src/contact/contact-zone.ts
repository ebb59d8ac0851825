/**
 * The part of a simple polygon in which a linear function is positive, as proper simple polygons.
 *
 * Method: the chains of the outline inside the half-plane are closed along the cutting line; crossings sorted along it
 * pair up as entry and exit, because outside and inside alternate. Corners on the line count as outside, so the
 * pieces may share a corner but never overlap.
 */
import { type Point, type Polygon, signedArea } from "../geometry/index.ts";

/** @param value - the function at a point; linear */
export const positivePieces = (polygon: Polygon, value: (p: Point) => number): Polygon[] => {
  const outline = signedArea(polygon) < 0 ? polygon.toReversed() : polygon;
  const v = outline.map(value);
  if (v.every((w) => w > 0)) return [outline];
  const chains = insideChains(outline, v);
  return joinChains(chains);
};

/** Pieces of the outline inside, each from the crossing where it enters to the one where it leaves. */
const insideChains = (outline: Polygon, v: readonly number[]): Point[][] => {
  const n = outline.length;
  const chains: Point[][] = [];
  for (let i = 0; i < n; i++) {
    if (v[i]! > 0 || v[(i + 1) % n]! <= 0) continue;
    const chain = [crossing(outline[i]!, outline[(i + 1) % n]!, v[i]!, v[(i + 1) % n]!)];
    let j = (i + 1) % n;
    for (; v[j]! > 0; j = (j + 1) % n) chain.push(outline[j]!);
    const last = (j + n - 1) % n;
    chain.push(crossing(outline[last]!, outline[j]!, v[last]!, v[j]!));
    chains.push(chain);
  }
  return chains;
};

const crossing = (p: Point, q: Point, vp: number, vq: number): Point => {
  const t = vp / (vp - vq);
  return { x: p.x + t * (q.x - p.x), y: p.y + t * (q.y - p.y) };
};

/** Closes the chains along the cutting line: the k-th pair of crossings along it bounds one inside stretch. */
const joinChains = (chains: readonly Point[][]): Polygon[] => {
  if (chains.length <= 1) return chains.map((c) => c);
  const ends = chains.flatMap((c, i) => [
    { chain: i, end: "entry" as const, at: c[0]! },
    { chain: i, end: "exit" as const, at: c.at(-1)! },
  ]);
  const origin = ends[0]!.at;
  const far = ends.reduce((a, b) => (span(origin, b.at) > span(origin, a.at) ? b : a)).at;
  const along = (p: Point): number => (p.x - origin.x) * (far.x - origin.x) + (p.y - origin.y) * (far.y - origin.y);
  ends.sort((a, b) => along(a.at) - along(b.at));
  const next = new Map<number, number>();
  for (let k = 0; k + 1 < ends.length; k += 2) {
    const [a, b] = [ends[k]!, ends[k + 1]!];
    if (a.end === "exit") next.set(a.chain, b.chain);
    else next.set(b.chain, a.chain);
  }
  const done = new Set<number>();
  const pieces: Polygon[] = [];
  for (let start = 0; start < chains.length; start++) {
    const piece: Point[] = [];
    for (let c: number | undefined = start; c !== undefined && !done.has(c); c = next.get(c)) {
      done.add(c);
      piece.push(...chains[c]!);
    }
    if (piece.length > 2) pieces.push(piece);
  }
  return pieces;
};

const span = (a: Point, b: Point): number => Math.hypot(a.x - b.x, a.y - b.y);
