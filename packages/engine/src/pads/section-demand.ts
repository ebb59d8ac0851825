/** Bending and shear across a straight section of a pad, from the ground pressure beyond it less the pad's own weight. */
import { clipByHalfPlane, type HalfPlane, type Polygon, polygonMoments } from "../geometry/index.ts";
import type { GroundPressure } from "./ground-pressure.ts";

/** Over the whole section. */
export interface SectionDemand {
  /** N·mm, tension below when positive */
  readonly M: number;
  /** N, ground pushing the part beyond upward when positive */
  readonly V: number;
}

/**
 * @param beyond - the half-plane that is cut off; its normal points from the section back to the column
 * @param weight - of the pad per area, MPa (thickness × unit weight)
 */
export const sectionDemand = (
  outline: Polygon,
  pressure: GroundPressure,
  weight: number,
  beyond: HalfPlane,
): SectionDemand => {
  const length = Math.hypot(beyond.nx, beyond.ny);
  const [nx, ny, c] = [beyond.nx / length, beyond.ny / length, beyond.c / length];
  const ground = momentsBeyond(pressure.contact, { nx, ny, c });
  const own = momentsBeyond(outline, { nx, ny, c });
  const up = pressure.q0 * ground.area + pressure.qx * ground.x + pressure.qy * ground.y;
  // ∫ q s dA with s = c − n·r the distance beyond the section
  const arm =
    c * up -
    nx * (pressure.q0 * ground.x + pressure.qx * ground.xx + pressure.qy * ground.xy) -
    ny * (pressure.q0 * ground.y + pressure.qx * ground.xy + pressure.qy * ground.yy);
  return {
    V: up - weight * own.area,
    M: arm - weight * (c * own.area - nx * own.x - ny * own.y),
  };
};

/** ∫ 1, x, y, x², xy, y² over the part beyond, about the plan's origin. */
const momentsBeyond = (polygon: Polygon, half: HalfPlane) => {
  const m = polygonMoments(clipByHalfPlane(polygon, half));
  return {
    area: m.area,
    x: m.area * m.x,
    y: m.area * m.y,
    xx: m.Iyy + m.area * m.x * m.x,
    xy: m.Ixy + m.area * m.x * m.y,
    yy: m.Ixx + m.area * m.y * m.y,
  };
};
