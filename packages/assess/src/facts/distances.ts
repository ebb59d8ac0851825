import { distanceToSegment, polygonDistance, type Segment, sides } from "@floorworthy/engine/geometry";
import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { barriersFor } from "../barriers.ts";
import { columnsOf } from "../columns.ts";
import { placedBases } from "../layout.ts";
import { term } from "./print.ts";
import type { NearestDistance, NearKind } from "./survey-answer.ts";

/** A named line of the floor. */
export interface FloorLine extends Segment {
  readonly kind: NearKind;
  readonly words: string;
  /** the thing it belongs to */
  readonly name: string;
}

export const floorLines = (job: Job, base: PlacedBase): readonly FloorLine[] => [
  ...barriersFor(job, base).map(({ a, b, kind, name, distance }) => ({
    a,
    b,
    kind: distance,
    words: lineWords(kind, name),
    name,
  })),
  ...job.floor.pipes.flatMap((pipe) =>
    pipe.line.slice(1).map((b, i) => ({
      a: pipe.line[i]!,
      b,
      kind: "pipe" as const,
      words: lineWords(pipeWords[pipe.kind], pipe.name),
      name: pipe.name,
    })),
  ),
  ...job.bay.walls.map(({ name, from, to }) => ({
    a: from,
    b: to,
    kind: "wall" as const,
    words: lineWords("wall", name),
    name,
  })),
];

const pipeWords = {
  water: "water pipe",
  drain: "drain",
  gas: "gas pipe",
  conduit: "conduit",
  heating: "heating tube",
  unknown: "pipe",
} as const;

/** "saw cut J2"; what a name says already is not said twice. */
const lineWords = (kind: string, name: string): string =>
  name.toLowerCase().includes(kind.split(" ").at(-1) ?? kind) ? name : `${kind} ${name}`;

/** Every kind of line that there is, for each column its nearest base: what somebody would measure with a tape. */
export const floorDistances = (job: Job): readonly NearestDistance[] =>
  columnsOf(placedBases(job), job.lift).flatMap(({ bases }) => {
    const all = bases.flatMap((base) => distancesOf(job, base));
    return [...new Set(all.map(({ kind }) => kind))].map((kind) =>
      all.filter((one) => one.kind === kind).reduce((near, one) => (reachOf(one) < reachOf(near) ? one : near)),
    );
  });

const reachOf = ({ anchor, plate }: NearestDistance): number =>
  (anchor?.distance ?? plate)?.value ?? Number.POSITIVE_INFINITY;

const distancesOf = (job: Job, base: PlacedBase): readonly NearestDistance[] => {
  const lines = floorLines(job, base);
  const kinds = [...new Set(lines.map(({ kind }) => kind))];
  return kinds.map((kind) =>
    nearestOf(
      job,
      base,
      kind,
      lines.filter((line) => line.kind === kind),
    ),
  );
};

const nearestOf = (job: Job, base: PlacedBase, kind: NearKind, lines: readonly FloorLine[]): NearestDistance => {
  const fromAnchors = base.anchors
    .flatMap(({ id, at }) => lines.map((line) => ({ id, line, d: distanceToSegment(at, line) })))
    .toSorted((a, b) => a.d - b.d)[0];
  const fromPlate = plateDistances(base, lines).toSorted((a, b) => a.d - b.d)[0];
  const { line } = (fromAnchors ?? fromPlate ?? { line: lines[0]! }) as { line: FloorLine };
  const length = (words: string, d: number): Term => term("c", words, d, "length", job.units);
  return {
    side: base.side,
    kind,
    to: line.words,
    anchor: fromAnchors && {
      id: fromAnchors.id,
      distance: length(`from anchor ${fromAnchors.id} to the ${fromAnchors.line.words}`, fromAnchors.d),
    },
    plate: fromPlate && length(`from the ${base.side} plate to the ${fromPlate.line.words}`, fromPlate.d),
  };
};

const plateDistances = ({ outline }: PlacedBase, lines: readonly FloorLine[]) =>
  outline.length < 3 ? [] : lines.map((line) => ({ line, d: polygonDistance([line.a, line.b], outline) }));

/** Lines that pass under a base plate, by more than touching it. */
export const linesUnder = (job: Job, base: PlacedBase): readonly FloorLine[] =>
  base.outline.length < 3
    ? []
    : floorLines(job, base).filter(
        (line) => line.kind !== "wall" && polygonDistance([line.a, line.b], base.outline) === 0 && crosses(line, base),
      );

const TOUCH = 1;

/** Whether some point of the line lies deeper than a hair inside the plate. */
const crosses = ({ a, b }: Segment, { outline }: PlacedBase): boolean => {
  const cx = outline.reduce((s, p) => s + p.x, 0) / outline.length;
  const cy = outline.reduce((s, p) => s + p.y, 0) / outline.length;
  const shrunk = outline.map((p) => {
    const d = Math.hypot(p.x - cx, p.y - cy);
    const f = d > TOUCH ? (d - TOUCH) / d : 0;
    return { x: cx + (p.x - cx) * f, y: cy + (p.y - cy) * f };
  });
  return sides(shrunk).length > 0 && polygonDistance([a, b], shrunk) === 0;
};
