import { distanceToBoundary, type Polygon, pointInPolygon, polygonDistance } from "@floorworthy/engine/geometry";
import type { Job, Zone } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import type { Facts } from "./facts.ts";
import { levelsAmong } from "./levels.ts";

/** A base plate that does not stand on one and the same concrete. */
export interface Straddle {
  readonly side: string;
  readonly kind: "footing" | "zone" | "readings";
  readonly words: string;
}

/** A base partly over a footing, the border of a zone of its own, or two levels of readings. */
export const straddles = (job: Job, { bases, thickness }: Facts): readonly Straddle[] =>
  bases.flatMap((base, i) => {
    const standing = job.floor.zones.filter((zone) => zone.state === "standing" && zone.kind !== "topping");
    const covered = new Set(job.floor.zones.filter((zone) => zone.state === "proposed" && holds(zone.outline, base)));
    if (covered.size > 0) return [];
    const borders = standing.filter((zone) => partly(zone.outline, base)).map((zone) => atBorder(base, zone));
    const footing = standing
      .filter((zone) => zone.kind === "footing" && holds(zone.outline, base))
      .map((zone) => onFooting(base, zone));
    const levels = levelsAmong(job, thickness[i]!.readings);
    return [
      ...footing,
      ...borders,
      ...(levels
        ? [
            {
              side: base.side,
              kind: "readings" as const,
              words: `at the ${base.side} base the readings stand on ${levels.words}: part of it may lie on a footing, a haunch or a second pour`,
            },
          ]
        : []),
    ];
  });

const onFooting = ({ side }: PlacedBase, { name }: Zone): Straddle => ({
  side,
  kind: "footing",
  words: `the ${side} base stands on ${name}, which carries the building`,
});

const atBorder = ({ side }: PlacedBase, { kind, name }: Zone): Straddle => ({
  side,
  kind: kind === "footing" ? "footing" : "zone",
  words: `the ${side} base stands partly on ${name}${kind === "footing" ? ", which carries the building" : ""} and partly beside it`,
});

const holds = (outline: Polygon, base: PlacedBase): boolean =>
  [base.centre, ...base.outline].every(
    (p) => pointInPolygon(p, outline) !== "outside" || distanceToBoundary(p, outline) < 1,
  );

/** Some of the plate inside, some of it outside; a plate that only touches the border is beside it. */
const partly = (outline: Polygon, base: PlacedBase): boolean => {
  if (base.outline.length < 3 || holds(outline, base)) return false;
  const pulled = base.outline.map((p) => toward(p, base.centre));
  return polygonDistance(pulled, outline) === 0;
};

const toward = (p: { x: number; y: number }, c: { x: number; y: number }) => {
  const d = Math.hypot(p.x - c.x, p.y - c.y);
  const f = d > 1 ? (d - 1) / d : 0;
  return { x: c.x + (p.x - c.x) * f, y: c.y + (p.y - c.y) * f };
};
