import { type Polygon, sides } from "@floorworthy/engine/geometry";
import type { Clear, Obstacle } from "@floorworthy/engine/placement";
import type { Job, Quantity } from "@floorworthy/job";
import { anchoring } from "../facts/anchoring.ts";
import { boxOf } from "../layout.ts";
import { baySides } from "./bay-sides.ts";
import { rectangle } from "./footprint.ts";
import { practice } from "./practice.ts";

/** An obstacle, and whose wish its distance is. */
export interface Constraint extends Obstacle {
  readonly standing: "maker" | "practice";
}

/** The first known of some distances asked, at its larger end, mm; 0 where none is. */
export const asked = (...facts: Quantity[]): number => {
  const first = facts.find((fact) => fact.known);
  return first?.known ? first.high : 0;
};

/** Everything the lift keeps away from, but for the boundary of the floor itself. */
export const constraintsOf = (job: Job): Constraint[] => [
  ...floorLines(job),
  ...thicknessSteps(job),
  ...pipes(job),
  ...boundary(job),
  ...things(job),
  ...walkway(job),
];

/** A distance the maker asks of anchors; of a lift that needs none, of its feet. */
const held = (job: Job, clear: number): Clear =>
  anchoring(job.lift) === "loose" ? { plates: clear } : { anchors: clear };

const floorLines = (job: Job): Constraint[] => {
  const { asks } = job.lift;
  const distance = { joint: asked(asks.joint, asks.edge), crack: asked(asks.crack, asks.edge) };
  const joints = job.floor.joints.map((joint, i) => ({
    id: `joint-${i + 1}`,
    name: joint.name,
    shape: { a: joint.from, b: joint.to },
    clear: held(job, distance.joint),
  }));
  const cracks = job.floor.cracks.flatMap((crack, i) =>
    crack.line.slice(1).map((b, k) => ({
      id: `crack-${i + 1}-${k + 1}`,
      name: crack.name,
      shape: { a: crack.line[k]!, b },
      clear: held(job, distance.crack),
    })),
  );
  return [...joints, ...cracks].map((line) => ({ ...line, standing: "maker" }));
};

/** A plate rests on one thickness, never on a footing; the edge of a pad that is not one with its slab is a joint. */
const thicknessSteps = (job: Job): Constraint[] => {
  const standingZones = job.floor.zones.filter(({ state, kind }) => state === "standing" || kind === "footing");
  const distance = asked(job.lift.asks.joint, job.lift.asks.edge);
  return standingZones.flatMap((zone, i): Constraint[] => {
    if (zone.kind === "footing")
      return [
        {
          id: `footing-${i + 1}`,
          name: zone.name,
          shape: zone.outline,
          clear: { plates: 0, anchors: 0 },
          standing: "practice",
        },
      ];
    const cold =
      (zone.kind === "pad" || zone.kind === "strip") && !(zone.tied.known && zone.tied.value === "cast-with");
    return sides(zone.outline).map((shape, k) => ({
      id: `step-${i + 1}-${k + 1}`,
      name: `edge of ${zone.name}`,
      shape,
      clear: cold ? { plates: 0, ...held(job, distance) } : { plates: 0 },
      standing: cold ? "maker" : "practice",
    }));
  });
};

/** A pipe deeper than the holes by two inches of concrete keeps nothing away. */
const pipes = ({ lift, floor }: Job): Constraint[] => {
  const { holeDepth, nominalEmbedment } = lift.anchors.product;
  const hole = asked(holeDepth, nominalEmbedment);
  return floor.pipes.flatMap((pipe, i): Constraint[] => {
    const below = pipe.depth.known && hole > 0 && pipe.depth.low >= hole + practice.belowHole;
    if (!pipe.clear.known && (below || anchoring(lift) === "loose")) return [];
    const clear: Clear = pipe.clear.known
      ? { anchors: pipe.clear.high, plates: pipe.clear.high }
      : pipe.kind === "heating"
        ? { anchors: practice.heating, plates: practice.heating }
        : { anchors: practice.pipe };
    return pipe.line.slice(1).map((b, k) => ({
      id: `pipe-${i + 1}-${k + 1}`,
      name: pipe.name,
      shape: { a: pipe.line[k]!, b },
      clear,
      standing: "practice",
    }));
  });
};

/** Walls and doors: the vehicle keeps off them, a plate off walls, the way in off jambs. */
const boundary = (job: Job): Constraint[] => {
  const { wall } = job.lift.asks;
  const plates = wall.known ? wall.high : practice.plateToWall;
  return baySides(job.bay).flatMap((side, i): Constraint[] => {
    const { a, b, what, name } = side;
    if (what === "open") return [];
    const id = `${what}-side-${i + 1}`;
    const shape = { a, b };
    if (what === "door") return [{ id, name, shape, clear: { vehicle: practice.bumper }, standing: "practice" }];
    return [
      { id, name, shape, clear: { plates }, standing: wall.known ? "maker" : "practice" },
      {
        id: `${id}-vehicle`,
        name,
        shape,
        clear: { vehicle: practice.bumper, path: practice.jamb },
        standing: "practice",
      },
    ];
  });
};

const things = ({ bay }: Job): Constraint[] =>
  [
    ...bay.posts.map((post) => ({
      ...post,
      clear: { plates: 0, body: 0, vehicle: practice.bumper, path: practice.jamb },
    })),
    ...bay.obstacles.map((thing) => ({
      ...thing,
      clear: { plates: 0, body: 0, vehicle: practice.bumper, path: practice.jamb },
    })),
  ].map(({ name, outline, clear }, i) => ({ id: `thing-${i + 1}`, name, shape: outline, clear, standing: "practice" }));

/** The way along the back wall is kept free of the vehicle; it runs from the wall itself. */
const walkway = ({ bay }: Job): Constraint[] => {
  if (!bay.walkway.known || !bay.outline || !(bay.walkway.high > 0)) return [];
  const { x0, x1, y0 } = boxOf(bay.outline);
  const shape: Polygon = rectangle({ x0, x1, y0, y1: y0 + bay.walkway.high });
  const clear: Clear = { vehicle: 0, plates: 0 };
  return [{ id: "walkway", name: "the walkway at the back", shape, clear, standing: "practice" }];
};
