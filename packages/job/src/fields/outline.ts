import { type Point, type Polygon, segmentsMeet, sides, signedArea } from "@floorworthy/engine/geometry";
import { isMap, type Node } from "yaml";
import { at, type Place, report } from "../reading/place.ts";
import { entriesOf } from "./entries.ts";
import type { AnyField, Field } from "./field.ts";
import { readWritten } from "./number-text.ts";
import { plainNumber } from "./plain-number.ts";
import { liftAxes, planAxes, point, pointOrNone, readLine, readPoint } from "./point.ts";

interface OutlineOptions {
  readonly axes?: "plan" | "lift";
  /** what of a rectangle stands at the origin when it is not placed */
  readonly origin?: "corner" | "centre";
}

const crossesItself = (polygon: Polygon): boolean => {
  const edges = sides(polygon);
  return edges.some((a, i) =>
    edges.some((b, j) => j > i + 1 && !(i === 0 && j === edges.length - 1) && segmentsMeet(a, b)),
  );
};

const counterClockwise = (polygon: Polygon): Polygon => (signedArea(polygon) < 0 ? [...polygon].reverse() : polygon);

/** Without a last point that repeats the first. */
const open = (points: readonly Point[]): readonly Point[] => {
  const [first, last] = [points[0], points.at(-1)];
  return points.length > 3 && first?.x === last?.x && first?.y === last?.y ? points.slice(0, -1) : points;
};

const checked = (corners: readonly Point[], node: Node, place: Place): Polygon | undefined => {
  const points = open(corners);
  if (crossesItself(points)) {
    report(place, node, "crossing-outline", {
      message: "The outline crosses or touches itself.",
      hint: "Write its corners in order, going round.",
    });
    return undefined;
  }
  if (Math.abs(signedArea(points)) < 1) {
    report(place, node, "flat-outline", {
      message: "The outline encloses no area.",
      hint: "Write its corners in order, going round.",
    });
    return undefined;
  }
  return counterClockwise(points);
};

const readRectangle = (
  node: Node,
  place: Place,
  axes: readonly [string, string],
  origin: "corner" | "centre",
): Polygon | undefined => {
  const entries = entriesOf(node, place, ["width", "depth", "corner", "centre"], "a rectangle");
  if (!entries) return undefined;
  const side = (key: string): number | undefined => {
    const value = entries.get(key)?.value;
    if (value) return readWritten(value, at(place, key), "length", "positive")?.value;
    report(at(place, key), node, "missing-key", {
      message: `"${key}" is missing.`,
      hint: "A rectangle has a width and a depth.",
    });
    return undefined;
  };
  const [width, depth] = [side("width"), side("depth")];
  const [corner, centre] = [entries.get("corner"), entries.get("centre")];
  if (corner?.value && centre?.value)
    report(place, centre.key, "two-placements", {
      message: "The rectangle is placed by its corner and by its centre.",
      hint: "Keep one of them.",
    });
  const key = centre?.value ? "centre" : "corner";
  const written = entries.get(key)?.value;
  const placed = written ? readPoint(written, at(place, key), axes) : { x: 0, y: 0 };
  if (width === undefined || depth === undefined || !placed) return undefined;
  const middle = centre?.value || (!corner?.value && origin === "centre");
  const { x, y } = middle ? { x: placed.x - width / 2, y: placed.y - depth / 2 } : placed;
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + depth },
    { x, y: y + depth },
  ];
};

const rectangleFields = (axes: readonly [string, string]): Readonly<Record<string, AnyField>> => ({
  width: { ...plainNumber("length", `its size along ${axes[0]}`, 0, "positive"), need: "required" },
  depth: { ...plainNumber("length", `its size along ${axes[1]}`, 0, "positive"), need: "required" },
  corner: { ...pointOrNone("the corner nearest to the origin"), shape: { kind: "point", axes } },
  centre: { ...pointOrNone("its centre, in place of the corner"), shape: { kind: "point", axes } },
});

/** A list of corners in order, or a rectangle of width and depth; counter-clockwise, mm. */
export const outline = (doc: string, options: OutlineOptions = {}): Field<Polygon | undefined> => {
  const axes = options.axes === "lift" ? liftAxes : planAxes;
  const corners: AnyField = {
    ...pointOrNone("its corners in order"),
    shape: { kind: "list", of: point("a corner", axes), least: 3, most: 200 },
  };
  const rectangle: AnyField = {
    ...corners,
    doc: "a rectangle",
    shape: { kind: "group", fields: rectangleFields(axes) },
  };
  return {
    shape: { kind: "either", of: [rectangle, corners] },
    doc,
    need: "optional",
    absent: () => undefined,
    read: (node, place) => {
      if (isMap(node)) return readRectangle(node, place, axes, options.origin ?? "corner");
      const points = readLine(node, place, axes, 3);
      return points ? checked(points, node, place) : undefined;
    },
  };
};

const nothing: Polygon = [];

/** An outline the item cannot do without. */
export const outlineNeeded = (doc: string, options: OutlineOptions = {}): Field<Polygon> => {
  const field = outline(doc, options);
  return {
    ...field,
    need: "required",
    absent: () => nothing,
    read: (node, place) => field.read(node, place) ?? nothing,
  };
};
