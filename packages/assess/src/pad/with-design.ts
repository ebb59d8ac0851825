import { type Point, type Polygon, sides, signedArea } from "@floorworthy/engine/geometry";
import type { Crack, Job, Joint, KnownQuantity, Zone } from "@floorworthy/job";
import { shown } from "../facts/print.ts";
import type { PadDesign } from "./design.ts";
import type { PadPart } from "./outlines.ts";

/** The job as it would be with this design poured: proposed pads of before go, joints and cracks end at a cut-out. */
export const withDesign = (job: Job, design: PadDesign, parts: readonly PadPart[]): Job => {
  const kept = job.floor.zones.filter(
    (zone) => zone.state !== "proposed" || (zone.kind !== "pad" && zone.kind !== "strip"),
  );
  if (design.size.shape === "whole-bay")
    return { ...job, floor: { ...job.floor, zones: kept, thickness: designed(job, design.depth, "length") } };
  const zones = parts.map(({ name, outline }): Zone => zoneOf(job, design, name, outline));
  const holes = design.join === "cast-with" ? [] : zones.map(({ outline }) => outline);
  return {
    ...job,
    floor: {
      ...job.floor,
      zones: [...kept, ...zones],
      joints: job.floor.joints.flatMap((joint) => jointOutside(joint, holes)),
      cracks: job.floor.cracks.flatMap((crack) => crackOutside(crack, holes)),
    },
  };
};

const designed = (job: Job, value: number, kind: "length" | "stress"): KnownQuantity => ({
  known: true,
  value,
  low: value,
  high: value,
  written: shown(value, kind, job.units),
  basis: { kind: "assumed", why: "as it would be poured" },
});

const zoneOf = (job: Job, design: PadDesign, name: string, outline: Polygon): Zone => ({
  name,
  kind: design.size.shape === "two-pads" ? "pad" : "strip",
  state: "proposed",
  outline,
  thickness: designed(job, design.depth, "length"),
  sideSlope: design.join === "cast-with" ? design.slope : 0,
  tied: { known: true, value: design.join, basis: { kind: "assumed", why: "as it would be poured" } },
  strength: designed(job, design.strength, "stress"),
  poured: undefined,
});

const jointOutside = (joint: Joint, holes: readonly Polygon[]): Joint[] => {
  const left = outsideAll([joint.from, joint.to], holes);
  const [only] = left;
  if (left.length === 1 && only![0] === joint.from && only![1] === joint.to) return [joint];
  return left.map(([from, to], i) => ({ ...joint, name: `${joint.name}, part ${i + 1}`, from, to }));
};

const crackOutside = (crack: Crack, holes: readonly Polygon[]): Crack[] => {
  const pieces = crack.line.slice(1).flatMap((b, i) => outsideAll([crack.line[i]!, b], holes));
  const untouched =
    pieces.length === crack.line.length - 1 && holes.every((hole) => pieces.every(([a]) => a !== hole[0]));
  const length = (line: readonly Point[]): number =>
    line.slice(1).reduce((s, b, i) => s + Math.hypot(b.x - line[i]!.x, b.y - line[i]!.y), 0);
  if (untouched && Math.abs(pieces.reduce((s, p) => s + length(p), 0) - length(crack.line)) < 1e-6) return [crack];
  return pieces.map((line, i) => ({ ...crack, name: i === 0 ? crack.name : `${crack.name}, part ${i + 1}`, line }));
};

type Segment = readonly [Point, Point];

const outsideAll = (segment: Segment, holes: readonly Polygon[]): Segment[] =>
  holes.reduce<Segment[]>((left, hole) => left.flatMap((one) => outside(one, hole)), [segment]);

/** What of a line lies outside a cut-out without notches. */
const outside = ([a, b]: Segment, hole: Polygon): Segment[] => {
  const ring = signedArea(hole) < 0 ? hole.toReversed() : hole;
  let [t0, t1] = [0, 1];
  for (const side of sides(ring)) {
    const [nx, ny] = [side.b.y - side.a.y, side.a.x - side.b.x];
    const at = (p: Point): number => nx * (p.x - side.a.x) + ny * (p.y - side.a.y);
    const [da, db] = [at(a), at(b)];
    if (da > 0 && db > 0) return [[a, b]];
    if (da > 0) t0 = Math.max(t0, da / (da - db));
    else if (db > 0) t1 = Math.min(t1, da / (da - db));
  }
  if (t1 - t0 < 1e-9) return [[a, b]];
  const point = (t: number): Point => ({ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) });
  return [...(t0 > 1e-9 ? [[a, point(t0)] as const] : []), ...(t1 < 1 - 1e-9 ? [[point(t1), b] as const] : [])];
};
