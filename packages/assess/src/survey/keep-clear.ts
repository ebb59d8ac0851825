import {
  distance,
  distanceToBoundary,
  distanceToPolygon,
  distanceToSegment,
  type Point,
  type Polygon,
  pointInPolygon,
  type Segment,
} from "@floorworthy/engine/geometry";

/** What a hole keeps away from. `within`: the hole stays inside and away from its boundary. */
export type Shape =
  | { readonly kind: "point"; readonly at: Point }
  | { readonly kind: "line"; readonly line: Segment }
  | { readonly kind: "outside"; readonly polygon: Polygon }
  | { readonly kind: "within"; readonly polygon: Polygon };

/** One thing, the least distance of a hole's centre from it in mm, and why. */
export interface KeepClear {
  readonly what: string;
  readonly shape: Shape;
  readonly asked: number;
  readonly why: string;
  /** the lesser distance taken where the bay leaves no other place; undefined: there is none */
  readonly lesser?: number;
}

/** mm; negative on the wrong side of a boundary. */
export const clearance = (p: Point, shape: Shape): number => {
  switch (shape.kind) {
    case "point":
      return distance(p, shape.at);
    case "line":
      return distanceToSegment(p, shape.line);
    case "outside":
      return pointInPolygon(p, shape.polygon) === "inside"
        ? -distanceToBoundary(p, shape.polygon)
        : distanceToPolygon(p, shape.polygon);
    case "within": {
      const d = distanceToBoundary(p, shape.polygon);
      return pointInPolygon(p, shape.polygon) === "inside" ? d : -d;
    }
  }
};

export type Strictness = "full" | "lesser";

export const askedOf = ({ asked, lesser }: KeepClear, strictness: Strictness): number =>
  strictness === "lesser" && lesser !== undefined ? Math.min(asked, lesser) : asked;

/** What forbids a hole at a place; empty where it is lawful. */
export const inTheWay = (p: Point, things: readonly KeepClear[], strictness: Strictness): readonly KeepClear[] =>
  things.filter((thing) => clearance(p, thing.shape) < askedOf(thing, strictness));
