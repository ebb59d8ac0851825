export type { Point, Polygon, Rect } from "./point.ts";
