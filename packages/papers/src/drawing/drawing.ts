/**
 * A neutral drawing: what is on the paper, as plain data. Renderers (svg/, pdf/, dxf/) know nothing of lifts or floors.
 *
 * Lengths named `…Paper` and text sizes are mm of paper. Points are mm of the model inside a `Ground` (which says at what
 * scale and where the model lies on the paper) and mm of paper outside one. On paper x runs right and y runs down.
 */
import type { Point, Polygon } from "@floorworthy/engine/geometry";
import type { PenName } from "./pens.ts";
import type { Lettering } from "./text-width.ts";

export interface Drawing {
  readonly title: string;
  /** what a person who cannot see it must be told */
  readonly description: string;
  /** mm of paper */
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
}

export type Item = Line | Polyline | Region | Circle | Words | Dimension | Label | Sign | Ground;

interface Tagged {
  /** what the item shows, e.g. "joints": the layer in DXF, the group in SVG */
  readonly tag: string;
}

export interface Line extends Tagged {
  readonly kind: "line";
  readonly from: Point;
  readonly to: Point;
  readonly pen: PenName;
}

export interface Polyline extends Tagged {
  readonly kind: "polyline";
  readonly points: readonly Point[];
  readonly pen: PenName;
  /** `irregular`: wanders about its line as a crack does */
  readonly course?: "straight" | "irregular";
}

export interface Region extends Tagged {
  readonly kind: "polygon";
  readonly points: Polygon;
  readonly pen?: PenName;
  readonly hatch: "none" | "blank" | "ink" | "concrete" | "diagonal" | "stone";
}

export interface Circle extends Tagged {
  readonly kind: "circle";
  readonly centre: Point;
  readonly radius: number;
  readonly pen: PenName;
  readonly hatch: "none" | "blank" | "ink";
}

export interface Words extends Tagged {
  readonly kind: "text";
  readonly at: Point;
  /** shift on the paper from `at`, mm */
  readonly nudge?: Point;
  readonly words: string;
  /** em size, mm of paper */
  readonly size: number;
  readonly align: "start" | "middle" | "end";
  readonly lettering: Lettering;
  /** reading direction */
  readonly reads: "across" | "upward";
  /** `cleared`: the paper behind the words is left blank */
  readonly behind?: "as-is" | "cleared";
}

/** A dimension with ticks. `x` and `y` measure along one axis at a distance from a base line; `aligned` from point to point. */
export interface Dimension extends Tagged {
  readonly kind: "dimension";
  readonly axis: "x" | "y" | "aligned";
  readonly from: Point;
  readonly to: Point;
  /** y (axis x) or x (axis y) of the line the extension lines start from; not used when aligned */
  readonly base: number;
  /** from the base line to the dimension line, mm of paper, signed */
  readonly offsetPaper: number;
  readonly words: string;
  /** rows by which narrow figures step away from the line */
  readonly row: number;
  /** `across`: the figure of a y dimension stands level, beyond the line */
  readonly figure?: "along" | "across";
  readonly size: number;
}

/** Words beside a place, with a leader to it. */
export interface Label extends Tagged {
  readonly kind: "label";
  readonly at: Point;
  readonly nudge: Point;
  readonly words: string;
  readonly size: number;
  readonly align: "start" | "end";
  readonly lettering: Lettering;
}

export interface Sign extends Tagged {
  readonly kind: "symbol";
  readonly name: "anchor" | "centre" | "reading" | "arrow-up" | "break";
  readonly at: Point;
  /** size on the paper, mm */
  readonly size: number;
}

/** A part of the paper where the model is drawn to scale. */
export interface Ground extends Tagged {
  readonly kind: "ground";
  readonly name: string;
  /** mm of the model per mm of paper */
  readonly scale: number;
  /** the scale as it is written, e.g. "1/4 in = 1 ft" */
  readonly written: string;
  /** where the model's origin lies on the paper */
  readonly origin: Point;
  readonly items: readonly Exclude<Item, Ground>[];
}
