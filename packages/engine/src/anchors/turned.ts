import type { Point, Polygon } from "../geometry/index.ts";
import type { Anchor, Barrier } from "./anchor-group.ts";

/** Turning of plan values about the origin, counter-clockwise, radians. An angle of 0 leaves every digit. */
const turned = ({ x, y }: Point, angle: number): Point => {
  if (angle === 0) return { x, y };
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { x: c * x - s * y, y: s * x + c * y };
};

export const turnedPolygon = (polygon: Polygon, angle: number): Polygon => polygon.map((p) => turned(p, angle));

export const turnedBarriers = (barriers: readonly Barrier[], angle: number): readonly Barrier[] =>
  barriers.map(({ a, b, kind }) => ({ a: turned(a, angle), b: turned(b, angle), kind }));

export const turnedAnchors = (anchors: readonly Anchor[], angle: number): readonly Anchor[] =>
  anchors.map((anchor) => {
    const shear = turned({ x: anchor.shearX, y: anchor.shearY }, angle);
    return { ...anchor, ...turned(anchor, angle), shearX: shear.x, shearY: shear.y };
  });
