/** A pad poured into a cut-out ends at a cold joint, and a cold joint is an edge for anchors. */
import { distanceToBoundary, type Point, type Polygon } from "../geometry/index.ts";
import type { Check } from "../quantities/index.ts";

/**
 * Nearest anchor to the pad's outline against the distance asked: the maker's, and never under 1.5 hef.
 * @param asked - distance the lift's or anchor's maker asks to an edge, mm; 0 when not stated
 * @param hef - effective embedment, mm
 */
export const coldJointCheck = (outline: Polygon, anchors: readonly Point[], hef: number, asked: number): Check => {
  const nearest = Math.min(...anchors.map((p) => distanceToBoundary(p, outline)));
  const least = Math.max(asked, 1.5 * hef);
  return {
    id: "pad-cold-joint",
    title: "Anchors to the cold joint round the pad",
    demand: {
      symbol: "c asked",
      words: asked >= 1.5 * hef ? "edge distance the maker asks" : "reach of the anchor's cone",
      value: least,
      unit: "mm",
      formula: "max(maker's distance, 1.5 hef)",
      worked: `max(${asked}, 1.5 × ${hef})`,
    },
    capacity: { symbol: "c", words: "nearest anchor to the pad's outline", value: nearest, unit: "mm" },
    ratio: nearest > 0 ? least / nearest : Number.POSITIVE_INFINITY,
    clause: "concrete cone of 1.5 hef, ACI 318-19, 17.6.2; maker's page",
  };
};
