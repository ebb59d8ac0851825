import type { Barrier } from "@floorworthy/engine/anchors";
import { sides } from "@floorworthy/engine/geometry";
import type { Job } from "@floorworthy/job";
import type { PlacedBase } from "./assessment.ts";
import { zoneUnder } from "./facts/thickness.ts";

/** A line that ends the concrete for an anchor, and which of the maker's distances speaks of it. */
export interface FloorBarrier extends Barrier {
  readonly name: string;
  readonly distance: "edge" | "joint" | "crack";
}

/** Slab edges, joints and cracks of the whole floor, and the cold joint around a base's own pad. */
export const barriersFor = (job: Job, base: PlacedBase): FloorBarrier[] => [
  ...(job.bay.outline ? sides(job.bay.outline) : []).map((side) => ({
    ...side,
    kind: "slab edge",
    name: "slab edge",
    distance: "edge" as const,
  })),
  ...job.floor.joints.map((joint) => ({
    a: joint.from,
    b: joint.to,
    kind: jointWords[joint.kind],
    name: joint.name,
    distance: "joint" as const,
  })),
  ...job.floor.cracks.flatMap((crack) =>
    crack.line
      .slice(1)
      .map((b, i) => ({ a: crack.line[i]!, b, kind: "crack", name: crack.name, distance: "crack" as const })),
  ),
  ...coldJoint(job, base),
];

const jointWords = {
  "saw-cut": "saw cut",
  construction: "construction joint",
  isolation: "isolation joint",
  cold: "cold joint",
  tooled: "tooled joint",
} as const;

const coldJoint = (job: Job, base: PlacedBase): FloorBarrier[] => {
  const zone = zoneUnder(job, base);
  if (!zone || (zone.tied.known && zone.tied.value === "cast-with") || !isPad(zone.kind)) return [];
  if (!zone.tied.known && job.floor.state === "to-be-poured") return [];
  return sides(zone.outline).map((side) => ({
    ...side,
    kind: "cold joint",
    name: `edge of ${zone.name}`,
    distance: "joint" as const,
  }));
};

const isPad = (kind: string): boolean => kind === "pad" || kind === "strip";
