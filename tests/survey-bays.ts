import type { Job, ThicknessReading, Zone } from "@floorworthy/job";
import { unknown } from "@floorworthy/job";
import fc from "fast-check";
import { box, choice, inch, known, standing } from "./papers/fixtures.ts";

/** Bays with a lift somewhere in them and joints, cracks, pipes, things and readings anywhere. Invented. */

/** Evenly spread: doubles of fast-check crowd around zero. */
const length = (low: number, high: number) =>
  fc.integer({ min: 0, max: 10_000 }).map((n) => low + ((high - low) * n) / 10_000);

const place = fc.tuple(length(0, 1), length(0, 1));

const reading = (at: { x: number; y: number }, inches: number): ThicknessReading => ({
  at,
  near: undefined,
  thickness: known(inch(inches)),
  method: "drill",
  end: "through",
  under: unknown,
  place: "slab",
  note: undefined,
});

export const surveyBays: fc.Arbitrary<Job> = fc
  .record({
    width: length(4000, 12000),
    depth: length(4000, 12000),
    at: fc.tuple(length(0.1, 0.5), length(0.1, 0.9)),
    spacing: length(2600, 3600),
    turn: fc.constantFrom(0, 0, 0, 0.2, Math.PI / 2),
    units: fc.constantFrom("si" as const, "inch-pound" as const),
    joints: fc.array(fc.tuple(fc.constantFrom("x", "y"), length(0.05, 0.95)), { maxLength: 3 }),
    cracks: fc.array(fc.array(place, { minLength: 2, maxLength: 4 }), { maxLength: 2 }),
    pipes: fc.array(fc.tuple(place, place, length(50, 500)), { maxLength: 2 }),
    obstacle: fc.option(place, { nil: undefined }),
    footing: fc.option(length(0.1, 0.3), { nil: undefined }),
    readings: fc.array(place, { maxLength: 3 }),
    hef: fc.option(length(50, 180), { nil: undefined }),
    holeDepth: fc.option(length(80, 160), { nil: undefined }),
    plate: fc.constantFrom("known", "unknown"),
    lift: fc.constantFrom("placed", "placed", "placed", "no-place"),
  })
  .map((r): Job => {
    const put = ([a, b]: readonly [number, number]) => ({ x: a * r.width, y: b * r.depth });
    const left = put(r.at);
    const right = { x: left.x + r.spacing * Math.cos(r.turn), y: left.y + r.spacing * Math.sin(r.turn) };
    const joint = ([axis, t]: readonly [string, number], i: number) => ({
      name: `J${i + 1}`,
      kind: "saw-cut" as const,
      from: axis === "x" ? { x: t * r.width, y: 0 } : { x: 0, y: t * r.depth },
      to: axis === "x" ? { x: t * r.width, y: r.depth } : { x: r.width, y: t * r.depth },
      transfer: unknown,
      state: "standing" as const,
    });
    const footing: Zone[] =
      r.footing === undefined
        ? []
        : [
            {
              name: "wall footing",
              kind: "footing",
              state: "standing",
              outline: box(0, 0, r.footing * r.width, r.depth),
              thickness: known(inch(12)),
              sideSlope: 0,
              tied: choice("cast-with" as const),
              strength: unknown,
              poured: undefined,
            },
          ];
    const { lift, floor, bay } = standing;
    const { anchors } = lift;
    return {
      ...standing,
      units: r.units,
      lift: {
        ...lift,
        spacing: known(r.spacing),
        base: { ...lift.base, outline: r.plate === "known" ? lift.base.outline : undefined },
        anchors: {
          ...anchors,
          product: {
            ...anchors.product,
            effectiveEmbedment: r.hef === undefined ? unknown : known(r.hef),
            holeDepth: r.holeDepth === undefined ? unknown : known(r.holeDepth),
          },
        },
      },
      position: r.lift === "placed" ? { left, right } : undefined,
      floor: {
        ...floor,
        utilities: choice(r.pipes.length > 0 ? "located" : "none"),
        heat: choice("none"),
        readings: r.readings.map((p) => reading(put(p), 5)),
        zones: footing,
        joints: r.joints.map(joint),
        cracks: r.cracks.map((line, i) => ({
          name: `K${i + 1}`,
          line: line.map(put),
          width: known(0.3),
          step: unknown,
          seen: [],
        })),
        pipes: r.pipes.map(([a, b, clear], i) => ({
          name: `P${i + 1}`,
          kind: "drain",
          line: [put(a), put(b)],
          depth: unknown,
          clear: known(clear),
        })),
      },
      bay: {
        ...bay,
        outline: box(0, 0, r.width, r.depth),
        walls: [],
        doors: [],
        obstacles: r.obstacle ? [{ name: "bench", outline: square(put(r.obstacle), 300) }] : [],
      },
    };
  });

const square = ({ x, y }: { x: number; y: number }, half: number) => box(x - half, y - half, x + half, y + half);
