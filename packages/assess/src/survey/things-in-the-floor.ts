import type { Point } from "@floorworthy/engine/geometry";
import { assumed, type Default, type Job, type Pipe, type Quantity, type Zone } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { zoneUnder } from "../facts/thickness.ts";
import { plateOf } from "./corners.ts";
import type { KeepClear } from "./keep-clear.ts";
import { CONE_REACH, drillPractice, HOLE_DEPTHS } from "./practice.ts";

const mm = (given: Default): number => assumed(given).value;

const named = (kind: string, name: string): string => (name === "" ? kind : name);

/** Everything in the floor a test hole keeps clear of, wherever it is. */
export const thingsInTheFloor = (job: Job, bases: readonly PlacedBase[]): readonly KeepClear[] => [
  ...edges(job),
  ...joints(job),
  ...cracks(job),
  ...job.floor.pipes.flatMap(pipeLines),
  ...thingsOnTheFloor(job),
  ...oldHoles(job),
  ...futureAnchors(job, bases),
  ...bases.map((base) => ({
    what: `${base.side} base plate`,
    shape: { kind: "outside", polygon: plateOf(base) } as const,
    asked: mm(drillPractice.plate),
    why: drillPractice.plate.why,
  })),
];

/** Parts of the floor with a thickness of their own: the hole stays in the part it speaks for, and out of the others. */
export const partsOfTheFloor = (job: Job, base: PlacedBase | undefined): readonly KeepClear[] => {
  const own = base && standing(zoneUnder(job, base));
  return [
    ...(own ? [part(own, "within")] : []),
    ...job.floor.zones
      .filter((zone) => standing(zone) && zone !== own && zone.kind !== "topping" && zone.kind !== "slab")
      .map((zone) => part(zone, "outside")),
  ];
};

const standing = (zone: Zone | undefined): Zone | undefined => (zone?.state === "standing" ? zone : undefined);

const part = (zone: Zone, kind: "within" | "outside"): KeepClear => {
  const given = zone.kind === "footing" || zone.kind === "thickened-edge" ? drillPractice.footing : drillPractice.zone;
  return {
    what: kind === "within" ? `edge of ${zone.name}` : zone.name,
    shape: { kind, polygon: zone.outline },
    asked: mm(given),
    why: given.why,
  };
};

const edges = ({ bay }: Job): readonly KeepClear[] =>
  bay.outline ? [edgeLike("slab edge", { kind: "within", polygon: bay.outline })] : [];

const edgeLike = (what: string, shape: KeepClear["shape"]): KeepClear => ({
  what,
  shape,
  asked: mm(drillPractice.edge),
  why: drillPractice.edge.why,
  lesser: mm(drillPractice.edgeAtLeast),
});

const joints = ({ floor }: Job): readonly KeepClear[] =>
  floor.joints.map(({ name, from, to }) => line(named("joint", name), from, to, drillPractice.line));

const cracks = ({ floor }: Job): readonly KeepClear[] =>
  floor.cracks.flatMap(({ name, line: course }) =>
    course.slice(1).map((to, i) => line(named("crack", name), course[i]!, to, drillPractice.line)),
  );

const line = (what: string, a: Point, b: Point, given: Default, asked = mm(given), why = given.why): KeepClear => ({
  what,
  shape: { kind: "line", line: { a, b } },
  asked,
  why,
});

const pipeLines = ({ name, kind, line: course, clear }: Pipe): readonly KeepClear[] => {
  const asked = clear.known ? clear.high : mm(drillPractice.pipe);
  const why = clear.known ? "the distance written for this line" : drillPractice.pipe.why;
  const what = named(kind === "unknown" ? "pipe" : `${kind} line`, name);
  const points = course.length === 1 ? [course[0]!, course[0]!] : course;
  return points.slice(1).map((to, i) => line(what, points[i]!, to, drillPractice.pipe, asked, why));
};

const thingsOnTheFloor = ({ bay }: Job): readonly KeepClear[] => [
  ...bay.posts.map(({ name, outline }) =>
    edgeLike(named("building column", name), { kind: "outside", polygon: outline }),
  ),
  ...bay.obstacles.map(({ name, outline }) => ({
    what: named("obstacle", name),
    shape: { kind: "outside", polygon: outline } as const,
    asked: mm(drillPractice.thing),
    why: drillPractice.thing.why,
  })),
  ...bay.walls.map(({ name, from, to }) => line(named("wall", name), from, to, drillPractice.thing)),
];

const oldHoles = ({ floor }: Job): readonly KeepClear[] =>
  floor.readings.flatMap(({ at, method }) =>
    at && (method === "drill" || method === "core")
      ? [
          {
            what: "older test hole",
            shape: { kind: "point", at } as const,
            asked: mm(drillPractice.otherHole),
            why: drillPractice.otherHole.why,
          },
        ]
      : [],
  );

const futureAnchors = (job: Job, bases: readonly PlacedBase[]): readonly KeepClear[] => {
  const { distance: asked, why } = anchorClear(job);
  return bases.flatMap(({ anchors }) =>
    anchors.map(({ id, at }) => ({ what: `anchor ${id}`, shape: { kind: "point", at } as const, asked, why })),
  );
};

/** How deep the holes of the lift's anchors will be, mm, and how that is known. */
export const anchorHoleDepth = ({ lift }: Job): { readonly depth: number; readonly why: string } => {
  const { holeDepth, nominalEmbedment } = lift.anchors.product;
  if (holeDepth.known) return { depth: holeDepth.high, why: "the anchor's sheet" };
  if (nominalEmbedment.known) {
    const beyond = drillPractice.anchorHoleBeyondEmbedment;
    return { depth: nominalEmbedment.high + mm(beyond), why: `embedment and a little: ${beyond.why}` };
  }
  return { depth: mm(drillPractice.anchorHole), why: `assumed: ${drillPractice.anchorHole.why}` };
};

/** The farther of the anchor's cone and two of its hole depths, mm. */
export const anchorClear = (job: Job): { readonly distance: number; readonly why: string } => {
  const hef: Quantity = job.lift.anchors.product.effectiveEmbedment;
  const cone = hef.known ? CONE_REACH * hef.high : 0;
  const { depth, why } = anchorHoleDepth(job);
  return cone > HOLE_DEPTHS * depth
    ? { distance: cone, why: `${CONE_REACH} times the anchor's depth: its cone of concrete` }
    : { distance: HOLE_DEPTHS * depth, why: `${HOLE_DEPTHS} depths of the anchor's hole (${why})` };
};
