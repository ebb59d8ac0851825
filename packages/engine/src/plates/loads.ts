import { type Polygon, polygonArea, polygonMoments, type Rect } from "../geometry/index.ts";
import { type Unable, unable } from "../quantities/workings.ts";
import { evaluate, spanAt, spanLength } from "./axis.ts";
import type { Floor, FloorCase, FloorLoad, FloorOptions } from "./floor.ts";
import type { Grid } from "./grid.ts";
import { addPressure } from "./pressure-load.ts";
import { clipToFloor, insideFloor } from "./rim.ts";
import { thicknessAt } from "./zones.ts";

/** The right-hand side of one case. A load that reaches beyond the slab cannot be carried by it. */
export const loadVector = (
  floor: Floor,
  grid: Grid,
  { name, loads }: FloorCase,
  options: FloorOptions,
): Float64Array | Unable => {
  const into = new Float64Array(grid.unknowns);
  for (const load of loads) {
    const spread = load.kind === "point" ? spreadPoint(floor, load, options) : load;
    if (spread.kind === "point") {
      if (!inside(floor.outline, spread.x, spread.y) || !insideFloor(floor)(spread))
        return beyond(name, "a point force");
      addPoint(grid, spread.x, spread.y, spread.P, into);
      continue;
    }
    const whole = polygonArea(spread.polygon);
    const onGrid = addPressure(grid, spread, into);
    const onFloor = floor.within ? polygonArea(clipToFloor(floor, spread.polygon)) : whole;
    if (Math.max(Math.abs(onGrid - whole), Math.abs(onFloor - whole)) > 1e-6 * whole)
      return beyond(name, "a contact pressure");
  }
  return into;
};

const beyond = (name: string, what: string): Unable =>
  unable(`plates: ${name}`, `${what} reaches beyond the edge of the slab`);

/** Total force, N, and its moments about the plan's origin: Σ P x, Σ P y. */
export const resultant = (load: FloorLoad): { P: number; Px: number; Py: number } => {
  if (load.kind === "point") return { P: load.P, Px: load.P * load.x, Py: load.P * load.y };
  const { area, x, y, Ixx, Iyy, Ixy } = polygonMoments(load.polygon);
  const P = area * (load.p0 + load.px * x + load.py * y);
  return { P, Px: P * x + load.px * Iyy + load.py * Ixy, Py: P * y + load.px * Ixy + load.py * Ixx };
};

const addPoint = (grid: Grid, px: number, py: number, P: number, into: Float64Array): void => {
  const { x, y, strideX, strideY } = grid;
  const [s, t] = [spanAt(x, px), spanAt(y, py)];
  const [nx, ny] = [new Float64Array(4), new Float64Array(4)];
  evaluate(x, s, (px - x.breaks[s]!) / spanLength(x, s), 0, nx);
  evaluate(y, t, (py - y.breaks[t]!) / spanLength(y, t), 0, ny);
  const start = x.first[s]! * strideX + y.first[t]! * strideY;
  for (let a = 0; a < 4; a++)
    for (let b = 0; b < 4; b++) into[start + a * strideX + b * strideY]! += P * nx[a]! * ny[b]!;
};

/**
 * Side of the square with the area of Westergaard's equivalent circle under a point force, b = 0.325 h (his
 * b = √(1.6 a² + h²) - 0.675 h at a = 0) [westergaard-1926].
 */
const squareOverThickness = 0.325 * Math.sqrt(Math.PI);

/** The square a point force acts on; a true point where asked for, or where the square would cross an edge or a joint. */
const spreadPoint = (floor: Floor, load: Extract<FloorLoad, { kind: "point" }>, options: FloorOptions): FloorLoad => {
  if (options.pointForces === "sharp") return load;
  const side = squareOverThickness * thicknessAt(floor, load);
  const square: Rect = { x0: load.x - side / 2, x1: load.x + side / 2, y0: load.y - side / 2, y1: load.y + side / 2 };
  const { outline, joints } = floor;
  const clear =
    inside(outline, square.x0, square.y0) &&
    inside(outline, square.x1, square.y1) &&
    corners(square).every(insideFloor(floor)) &&
    joints.every(({ axis, at }) =>
      axis === "x" ? at <= square.x0 || at >= square.x1 : at <= square.y0 || at >= square.y1,
    );
  if (!clear) return load;
  return { kind: "pressure", polygon: corners(square), p0: load.P / (side * side), px: 0, py: 0 };
};

const corners = ({ x0, y0, x1, y1 }: Rect): Polygon => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

const inside = ({ x0, y0, x1, y1 }: Rect, x: number, y: number): boolean => x >= x0 && x <= x1 && y >= y0 && y <= y1;
