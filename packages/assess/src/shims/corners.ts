import type { Point } from "@floorworthy/engine/geometry";
import type { BaseCorner } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";

export const cornerNames: readonly BaseCorner[] = ["back-left", "back-right", "front-left", "front-right"];

const toward: Readonly<Record<BaseCorner, Point>> = {
  "back-left": { x: -1, y: -1 },
  "back-right": { x: 1, y: -1 },
  "front-left": { x: -1, y: 1 },
  "front-right": { x: 1, y: 1 },
};

/** The corner of the plate that lies farthest that way in the plan. */
export const cornerAt = ({ outline, centre }: PlacedBase, corner: BaseCorner): Point => {
  const { x, y } = toward[corner];
  return outline.reduce((best, p) => (p.x * x + p.y * y > best.x * x + best.y * y ? p : best), outline[0] ?? centre);
};
