import { clipByHalfPlane, type Polygon, polygonArea, type Rect } from "@floorworthy/engine/geometry";
import type { Joint } from "@floorworthy/engine/plates";
import type { Term } from "@floorworthy/engine/quantities";
import { type SlabOnGround, stiffnessRadius } from "@floorworthy/engine/slabs";
import type { Job } from "@floorworthy/job";
import type { End } from "../facts/known.ts";
import { boxOf } from "../layout.ts";
import { springsOf } from "./crossing.ts";
import { drawnOn, type FloorLine, floorLines, length, runsUnder, shortOf, toBase } from "./floor-lines.ts";
import type { Panel } from "./panel.ts";

/** One piece of a panel to be solved by itself. */
export interface SlabPiece {
  readonly name: string;
  readonly rect: Rect;
  /** what of the rectangle is concrete, where a line cuts it aslant */
  readonly within: Polygon | undefined;
  readonly joints: readonly Joint[];
  /** what crosses the joints, unfolded */
  readonly shares: readonly Term[];
}

/** Lines nearer to each other or to the panel's edge than this are one, mm. */
const SAME = 50;
/** A line that turns less than this from the plan's axes, rise over run, lies along one of them. */
const ALONG_AXIS = 0.009;
const FAR = 100_000;

/**
 * The pieces to solve; of every check the worst piece counts.
 *
 *   lines that run through the panel along the walls: in the grid, with what crosses them
 *   lines aslant: the panel ends there, a free edge, on both sides in turn; nothing is counted across
 *   lines that end in the panel: drawn on through it as open ones, and beside that as they are (aslant: not there), and,
 *     where drawn on they run under a plate that they do not touch, with an edge short of it
 *   open lines under a plate (each side carries half) or half an l to 1.2 l away can flatter: unless somebody said that
 *     nothing crosses, also without them
 */
export const slabPieces = (job: Job, panel: Panel, slab: SlabOnGround, end: End): SlabPiece[] => {
  if (panel.alone === "alone") return [whole(panel, [])];
  const lines = floorLines(job, panel.bases, end).filter((line) => comesNear(line, panel.rect));
  const through = lines.filter((line) => runsThrough(line, panel.rect));
  const ending = lines.filter((line) => !through.includes(line));
  const open = (line: FloorLine): FloorLine => ({ ...drawnOn(line, FAR), crossing: { kind: "open" } });
  const make = (own: readonly FloorLine[]): SlabPiece[] => cutUp(job, panel, own, slab, end);
  const short = ending.map((line) => edgesShortOf(line, panel)).filter((own) => own.length > 0);
  return distinct([
    ...make([...through, ...ending.map(open)]),
    ...(ending.length > 0 ? make([...through, ...ending.filter((line) => axisOf(line) !== undefined)]) : []),
    ...short.flatMap((own) => own.flatMap((edge) => make([...through, edge]))),
    ...(flatters(lines, panel, stiffnessRadius(slab)) ? [whole(panel, [])] : []),
  ]);
};

const whole = ({ rect, name }: Panel, joints: readonly Joint[], shares: readonly Term[] = []): SlabPiece => ({
  name,
  rect,
  within: undefined,
  joints,
  shares,
});

const cutUp = (job: Job, panel: Panel, lines: readonly FloorLine[], slab: SlabOnGround, end: End): SlabPiece[] => {
  const { joints, shares } = gridJoints(job, panel.rect, lines, slab, end);
  const slanting = lines.filter((line) => axisOf(line) === undefined);
  const base = whole(panel, joints, shares);
  if (slanting.length === 0) return [base];
  const pieces = slanting.reduce<Polygon[]>(
    (parts, line) => parts.flatMap((part) => halves(part, line)).filter((part) => carries(panel, part)),
    [corners(panel.rect)],
  );
  const cut = [...new Set(slanting.map(({ name }) => name))].join(" and ");
  return pieces.map((within) => ({
    ...base,
    name: `${panel.name} beside ${cut}`,
    rect: overlap(boxOf(within), panel.rect),
    within,
  }));
};

const halves = (part: Polygon, { a, b }: FloorLine): Polygon[] => {
  const d = Math.hypot(b.x - a.x, b.y - a.y);
  const [nx, ny] = [(b.y - a.y) / d, (a.x - b.x) / d];
  const c = nx * a.x + ny * a.y;
  return [clipByHalfPlane(part, { nx, ny, c }), clipByHalfPlane(part, { nx: -nx, ny: -ny, c: -c })].filter(
    (half) => half.length >= 3 && polygonArea(half) > 1,
  );
};

const carries = ({ bases }: Panel, part: Polygon): boolean =>
  bases.some((base) => polygonArea(clippedTo(base.outline, part)) > 1);

/** The part of a polygon in a convex one that runs counter-clockwise. */
export const clippedTo = (polygon: Polygon, part: Polygon): Polygon =>
  part.reduce<Polygon>((left, a, i) => {
    const b = part[(i + 1) % part.length]!;
    const [nx, ny] = [b.y - a.y, a.x - b.x];
    return left.length < 3 ? [] : clipByHalfPlane(left, { nx, ny, c: nx * a.x + ny * a.y });
  }, polygon);

const gridJoints = (job: Job, rect: Rect, lines: readonly FloorLine[], slab: SlabOnGround, end: End) => {
  const joints: Joint[] = [];
  const shares: Term[] = [];
  for (const line of lines) {
    const axis = axisOf(line);
    if (axis === undefined) continue;
    const along = axis === "x" ? "y" : "x";
    const at = (line.a[axis] + line.b[axis]) / 2;
    const [low, high] = axis === "x" ? [rect.x0, rect.x1] : [rect.y0, rect.y1];
    if (at <= low + SAME || at >= high - SAME) continue;
    const [from, to] = [Math.min(line.a[along], line.b[along]), Math.max(line.a[along], line.b[along])];
    const { transfer, term } = springsOf(job, line.crossing, line.name, slab, end);
    const joint: Joint = { axis, at, transfer, ...(runsThrough(line, rect) ? {} : { from, to }) };
    const twin = joints.findIndex((o) => o.axis === axis && Math.abs(o.at - at) < SAME && o.from === joint.from);
    if (twin < 0) {
      joints.push(joint);
      if (term) shares.push(term);
    } else if (transfer.kind === "none") joints[twin] = { ...joint, at: joints[twin]!.at };
  }
  return { joints, shares };
};

const axisOf = ({ a, b }: FloorLine): "x" | "y" | undefined => {
  const [dx, dy] = [Math.abs(b.x - a.x), Math.abs(b.y - a.y)];
  if (dx <= ALONG_AXIS * dy) return "x";
  return dy <= ALONG_AXIS * dx ? "y" : undefined;
};

const comesNear = (line: FloorLine, rect: Rect): boolean => {
  const part = clippedLine(line, rect);
  return part !== undefined && part > SAME;
};

/** Length of the part of a line inside a rectangle, mm; undefined outside it. Liang–Barsky. */
const clippedLine = ({ a, b }: FloorLine, { x0, x1, y0, y1 }: Rect): number | undefined => {
  let [t0, t1] = [0, 1];
  for (const [p, q] of [
    [a.x - b.x, a.x - x0],
    [b.x - a.x, x1 - a.x],
    [a.y - b.y, a.y - y0],
    [b.y - a.y, y1 - a.y],
  ] as const) {
    if (p === 0 && q < 0) return undefined;
    if (p < 0) t0 = Math.max(t0, q / p);
    if (p > 0) t1 = Math.min(t1, q / p);
  }
  return t1 > t0 ? (t1 - t0) * Math.hypot(b.x - a.x, b.y - a.y) : undefined;
};

/** From edge to edge of the panel, as far as it is looked at. */
const runsThrough = (line: FloorLine, rect: Rect): boolean => {
  const inside = clippedLine(line, rect);
  const on = clippedLine(drawnOn(line, FAR), rect);
  return inside !== undefined && on !== undefined && on - inside < 2 * SAME;
};

const edgesShortOf = (line: FloorLine, { bases }: Panel): FloorLine[] =>
  bases
    .filter((base) => base.outline.length >= 3 && runsUnder(drawnOn(line, FAR), base) && !runsUnder(line, base))
    .flatMap((base) => shortOf(line, base, FAR) ?? []);

const flatters = (lines: readonly FloorLine[], { bases }: Panel, l: number): boolean => {
  const distances = lines
    .filter((line) => line.openness === "not-stated" && length(line) > 0)
    .map((line) => Math.min(...bases.map((base) => toBase(line, base))));
  const nearest = Math.min(Infinity, ...lines.map((line) => Math.min(...bases.map((base) => toBase(line, base)))));
  return distances.some((d) => d < 1) || (nearest > 0.4 * l && distances.some((d) => d < 1.2 * l));
};

const distinct = (pieces: readonly SlabPiece[]): SlabPiece[] => {
  const seen = new Map<string, SlabPiece>();
  for (const piece of pieces) {
    const key = JSON.stringify([piece.rect, piece.within, piece.joints]);
    if (!seen.has(key)) seen.set(key, piece);
  }
  return [...seen.values()];
};

const corners = ({ x0, y0, x1, y1 }: Rect): Polygon => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

const overlap = (a: Rect, b: Rect): Rect => ({
  x0: Math.max(a.x0, b.x0),
  y0: Math.max(a.y0, b.y0),
  x1: Math.min(a.x1, b.x1),
  y1: Math.min(a.y1, b.y1),
});
