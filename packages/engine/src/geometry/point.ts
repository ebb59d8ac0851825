/** A point of the one plan, mm: x to the right from the left wall, y from the back wall toward the door. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** A simple polygon, counter-clockwise, not closed (the first point is not repeated). */
export type Polygon = readonly Point[];

/** An axis-parallel rectangle, mm. */
export interface Rect {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}
