import type { Assessment } from "@floorworthy/assess";
import type { Point, Polygon, Rect, Segment } from "@floorworthy/engine/geometry";
import type { Job, Wall } from "@floorworthy/job";
import type { Ground, Words } from "../drawing/drawing.ts";
import { boundsOf } from "../drawing/hatch.ts";
import { marksOf } from "../drawing/marks.ts";
import { placeLabels } from "../drawing/place-labels.ts";
import { boxOfText } from "../drawing/text-width.ts";
import { basesPart } from "./bases.ts";
import { floorOutline, planExtents } from "./extents.ts";
import { fitted } from "./fit.ts";
import { cracksPart, jointsPart, pipesPart } from "./lines.ts";
import { nothing, type Part, together } from "./part.ts";
import { readingsPart } from "./readings.ts";
import type { Scale } from "./scales.ts";
import { wallsPart } from "./walls.ts";
import { zonesPart } from "./zones.ts";

const LETTERS = 2.1;

/** Names of straight walls, written along their inner faces. */
const wallName = ({ name, from, to }: Wall, middle: Point): Words | undefined => {
  const flat = Math.abs(to.y - from.y) < 1;
  if (name === "" || (!flat && Math.abs(to.x - from.x) >= 1)) return undefined;
  const at = { x: from.x + (to.x - from.x) * 0.28, y: from.y + (to.y - from.y) * 0.28 };
  const inward = flat ? Math.sign(middle.y - from.y) : Math.sign(middle.x - from.x);
  const nudge = flat ? { x: 0, y: inward > 0 ? 2.6 : -1.1 } : { x: inward > 0 ? 2.6 : -1.1, y: 0 };
  return {
    kind: "text",
    tag: "walls",
    at,
    nudge,
    words: name.toUpperCase(),
    size: 1.9,
    align: "middle",
    lettering: "regular",
    reads: flat ? "across" : "upward",
    behind: "cleared",
  };
};

const linesOf = (marks: ReturnType<typeof marksOf>): readonly Segment[] =>
  marks.flatMap((mark) =>
    mark.kind === "path" && mark.pen && mark.tag !== "hatch" && mark.tag !== "clearing" && mark.points.length < 60
      ? mark.points.slice(1).map((b, i) => ({ a: mark.points[i]!, b }))
      : [],
  );

const bands = (outline: Polygon): Point => {
  const { x0, y0, x1, y1 } = boundsOf(outline);
  return { x: (x0 + x1) / 2, y: (y0 + y1) / 2 };
};

/**
 * The bay from above, to the largest standard scale that fits the given part of the paper, with its dimensions and labels.
 * Undefined when neither the floor nor the lift has a place yet. `more`: what a sheet of its own adds, with its labels.
 */
export const planGround = (
  job: Job,
  assessment: Assessment,
  zone: Rect,
  wantedScale?: Scale,
  more: Part = nothing,
): Ground | undefined => {
  const floor = floorOutline(job, assessment);
  if (!floor) return undefined;
  const { outline } = floor;
  const { layout } = assessment;
  const extents = planExtents(job, assessment, outline);
  const { scale, origin, dimensions } = fitted(job, assessment, outline, extents, zone, wantedScale);
  const k = 1 / scale.ratio;
  const common = together([
    zonesPart(layout.zones, job.units),
    pipesPart(job.floor.pipes, job.units),
    jointsPart(job.floor.joints),
    cracksPart(job.floor.cracks, job.units),
    wallsPart(job.bay, outline, job.units),
    basesPart(layout.bases, job, scale.ratio),
    readingsPart(job, layout.bases),
  ]);
  // what is added is drawn over the rest, and its labels choose their places first
  const parts: Part = {
    items: [...common.items, ...more.items],
    wanted: [...more.wanted, ...common.wanted],
  };
  const pen = floor.known === "known" ? "edge" : "planned";
  const slab = { kind: "polygon", tag: "slab", points: outline, pen, hatch: "none" } as const;
  const names = job.bay.walls.flatMap((wall) => wallName(wall, bands(outline)) ?? []);
  const drawn = [slab, ...parts.items, ...dimensions, ...names];
  const marks = marksOf(drawn, { k, s: 1, origin });
  const toPaper = (p: Point): Point => ({ x: p.x * k + origin.x, y: p.y * k + origin.y });
  const labels = placeLabels(
    parts.wanted.map((w) => ({ ...w, size: LETTERS, target: toPaper(w.at) })),
    {
      boxes: [
        ...marks.flatMap((mark) => (mark.kind === "text" ? [boxOfText(mark)] : [])),
        ...layout.bases.map((base) => boundsOf(base.outline.map(toPaper))),
      ],
      avoid: parts.items.flatMap((item) =>
        item.kind === "polygon" && item.hatch === "concrete" ? [boundsOf(item.points.map(toPaper))] : [],
      ),
      lines: linesOf(marks),
      within: zone,
    },
  );
  return {
    kind: "ground",
    tag: "plan",
    name: "plan",
    scale: scale.ratio,
    written: scale.written,
    origin,
    items: [...drawn, ...labels],
  };
};
