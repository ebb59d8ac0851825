/** Small pieces that the plate tests share. No expected numbers here. */
import type { Polygon, Rect } from "@floorworthy/engine/geometry";
import {
  type Floor,
  type FloorLoad,
  type FloorOptions,
  type FloorResult,
  flexuralRigidity,
  relativeStiffness,
  solveFloor,
} from "@floorworthy/engine/plates";

export const inch = 25.4;
export const pound = 4.4482216152605;
export const psi = pound / inch ** 2;
export const pci = pound / inch ** 3;

/** A concrete slab without weight, joints or zones. */
export const plainFloor = (outline: Rect, change: Partial<Floor> = {}): Floor => ({
  outline,
  thickness: 100,
  zones: [],
  E: 28_000,
  nu: 0.15,
  k: 0.027,
  unitWeight: 0,
  joints: [],
  ...change,
});

export const square = (half: number, x = 0, y = 0): Rect => ({
  x0: x - half,
  x1: x + half,
  y0: y - half,
  y1: y + half,
});

export const corners = ({ x0, y0, x1, y1 }: Rect): Polygon => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

/** Total force P spread evenly over a polygon. */
export const spread = (polygon: Polygon, P: number): FloorLoad => ({
  kind: "pressure",
  polygon,
  p0: P / area(polygon),
  px: 0,
  py: 0,
});

const area = (polygon: Polygon): number =>
  polygon.reduce((sum, p, i) => {
    const q = polygon[(i + 1) % polygon.length]!;
    return sum + (p.x * q.y - q.x * p.y) / 2;
  }, 0);

/** A circle as a polygon of the same area. */
export const circle = (a: number, x = 0, y = 0, sides = 180): Polygon => {
  const r = a * Math.sqrt((2 * Math.PI) / sides / Math.sin((2 * Math.PI) / sides));
  return Array.from({ length: sides }, (_, i) => {
    const angle = (2 * Math.PI * i) / sides;
    return { x: x + r * Math.cos(angle), y: y + r * Math.sin(angle) };
  });
};

/** The half of such a circle on the side x > 0, its diameter on x = 0. */
export const halfCircle = (a: number, sides = 180): Polygon => {
  const r = a * Math.sqrt(Math.PI / sides / Math.sin(Math.PI / sides));
  return Array.from({ length: sides + 1 }, (_, i) => {
    const angle = (Math.PI * i) / sides - Math.PI / 2;
    return i === 0 || i === sides
      ? { x: 0, y: r * Math.sin(angle) }
      : { x: r * Math.cos(angle), y: r * Math.sin(angle) };
  });
};

export const solveOne = (
  floor: Floor,
  loads: readonly FloorLoad[],
  options: Partial<FloorOptions> = {},
): FloorResult => {
  const results = solveFloor(floor, [{ name: "test", loads }], { support: "both-ways", focus: [], ...options });
  if ("unable" in results) throw new Error(`${results.place}: ${results.reason}`);
  return results[0]!;
};

export const lengthOf = ({ E, nu, thickness, k }: Floor): number => relativeStiffness(E, nu, thickness, k);
export const rigidityOf = ({ E, nu, thickness }: Floor): number => flexuralRigidity(E, nu, thickness);

export const relativeError = (got: number, expected: number): number => Math.abs(got - expected) / Math.abs(expected);
