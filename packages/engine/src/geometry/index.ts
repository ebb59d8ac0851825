export { clipByHalfPlane, type HalfPlane } from "./clip-half-plane.ts";
export { convexHull } from "./convex-hull.ts";
export {
  distance,
  distanceToBoundary,
  distanceToLine,
  distanceToPolygon,
  distanceToSegment,
  nearestOnSegment,
  polygonDistance,
  type Segment,
  segmentDistance,
  segmentsMeet,
  sides,
} from "./distance.ts";
export type { Point, Polygon, Rect } from "./point.ts";
export { pointInPolygon } from "./point-in-polygon.ts";
export { type AreaMoments, polygonArea, polygonCentroid, polygonMoments, signedArea } from "./polygon-area.ts";
export { unionArea } from "./union-area.ts";
export { unionOutline } from "./union-outline.ts";
