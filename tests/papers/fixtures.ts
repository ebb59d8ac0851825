import type { Assessment, Layout } from "@floorworthy/assess";
import type { Point, Polygon } from "@floorworthy/engine/geometry";
import { type Job, type KnownQuantity, type Lift, readJob, unknown, type Zone } from "@floorworthy/job";

/** Invented jobs for the papers. Inches in, base units out. */
export const inch = (n: number) => n * 25.4;

export const known = (value: number): KnownQuantity => ({
  known: true,
  value,
  low: value,
  high: value,
  basis: { kind: "stated" },
  written: String(value),
});

export const choice = <T>(value: T) => ({ known: true as const, value, basis: { kind: "stated" as const } });

export const box = (x0: number, y0: number, x1: number, y1: number): Polygon => [
  { x: x0, y: y0 },
  { x: x1, y: y0 },
  { x: x1, y: y1 },
  { x: x0, y: y1 },
];

const at = (x: number, y: number): Point => ({ x, y });

const holes = [
  { id: "A1", at: at(inch(-6), inch(-8)) },
  { id: "A2", at: at(inch(6), inch(-8)) },
  { id: "A3", at: at(inch(-6), inch(8)) },
  { id: "A4", at: at(inch(6), inch(8)) },
  { id: "A5", at: at(inch(-6), 0) },
];

export const lift: Lift = {
  name: "Tarn Valley 10 two-post",
  kind: "two-post",
  manual: choice("in-hand"),
  edition: "Sheet F, revision 3",
  top: choice("overhead-tied"),
  arms: choice("symmetric"),
  columnTurn: known(0),
  rated: known(10000 * 4.4482216),
  columnWeight: known(700 * 4.4482216),
  spacing: known(inch(126)),
  tieHeight: known(inch(140)),
  overallHeight: known(inch(142)),
  overallWidth: known(inch(137)),
  pickupHeight: unknown,
  fullHeight: unknown,
  reachCar: unknown,
  reachTruck: unknown,
  padSpacing: unknown,
  columnInertia: unknown,
  fixing: unknown,
  base: { outline: box(inch(-9), inch(-10), inch(9), inch(10)), thickness: known(inch(0.75)) },
  anchors: {
    holes,
    product: {
      sheet: choice("in-hand"),
      kind: choice("expansion"),
      diameter: known(inch(0.75)),
      length: known(inch(5.5)),
      nominalEmbedment: known(inch(3.75)),
      effectiveEmbedment: known(inch(3.25)),
      holeDiameter: known(inch(0.75)),
      holeDepth: known(inch(4.25)),
      category: choice("1"),
      minimumThickness: unknown,
      minimumEdge: unknown,
      minimumSpacing: unknown,
      criticalEdge: unknown,
      pulloutCracked: unknown,
      pulloutUncracked: unknown,
      steelArea: unknown,
      steelStrength: unknown,
      steelYield: unknown,
      ductile: unknown,
    },
    torque: known(110 * 1355.8179),
    shimLimit: unknown,
  },
  asks: {
    thickness: known(inch(4.25)),
    strength: known(3000 * 0.00689476),
    days: known(28),
    edge: known(inch(6)),
    joint: known(inch(8)),
    crack: unknown,
    wall: unknown,
    reinforcement: unknown,
    slope: unknown,
    ceiling: unknown,
  },
  reactions: [],
  supports: [],
};

const W = inch(288);
const D = inch(312);
const left = at(inch(84), inch(132));
const right = at(inch(84 + 126), inch(132));

const zone = (name: string, outline: Polygon, more: Partial<Zone> = {}): Zone => ({
  name,
  kind: "pad",
  state: "proposed",
  outline,
  thickness: known(inch(12)),
  sideSlope: 1,
  tied: choice("cast-with"),
  strength: unknown,
  poured: undefined,
  ...more,
});

const pad = (c: Point, half: number): Polygon => box(c.x - half, c.y - half, c.x + half, c.y + half);

const nothingWritten = readJob("floorworthy: 1\ntitle: t\nlift: { name: L, kind: two-post }\n");
if (!nothingWritten.ok) throw new Error("The shortest job was not read.");
const nothingWished = { pad: nothingWritten.job.pad, prices: nothingWritten.job.prices };

/** A new 24 by 26 ft garage with two thick pads cast with its slab. */
export const newPour: Job = {
  format: 1,
  title: "Harrow Lane garage, new slab",
  customer: "O. Winslade",
  place: "Harrow Lane 14, Easterby",
  date: "2026-05-04",
  units: "inch-pound",
  setting: {
    use: choice("home"),
    permit: unknown,
    seismic: unknown,
    weather: unknown,
    slopeNear: unknown,
    slabOwner: unknown,
  },
  lift,
  floor: {
    state: "to-be-poured",
    kind: choice("slab-on-ground"),
    below: choice("ground"),
    postTension: choice("none-shown"),
    heat: choice("located"),
    utilities: choice("located"),
    movement: choice("none"),
    surface: unknown,
    layer: choice("none"),
    thickness: known(inch(5)),
    readings: [],
    zones: [zone("Left pad", pad(left, inch(30))), zone("Right pad", pad(right, inch(30)))],
    strength: {
      specified: known(4000 * 0.00689476),
      tickets: unknown,
      cylinders: [],
      cores: [],
      rebound: [],
      tensileAsPrinted: unknown,
    },
    poured: undefined,
    ageDays: unknown,
    reinforcement: choice("bars"),
    bars: [
      { size: "#4", spacing: known(inch(12)), depth: known(inch(2)), direction: "both" },
      { size: "#4", spacing: known(inch(12)), depth: known(inch(9)), direction: "both" },
    ],
    ground: {
      soil: choice("sand"),
      wet: unknown,
      base: choice("crushed-stone"),
      foam: choice("none"),
      voids: choice("none"),
      k: unknown,
      bearing: unknown,
    },
    joints: [
      {
        name: "J1",
        kind: "saw-cut",
        from: at(inch(147), 0),
        to: at(inch(147), D),
        transfer: unknown,
        state: "proposed",
      },
      {
        name: "J2",
        kind: "saw-cut",
        from: at(0, inch(210)),
        to: at(W, inch(210)),
        transfer: unknown,
        state: "proposed",
      },
    ],
    cracks: [],
    pipes: [
      {
        name: "floor drain",
        kind: "drain",
        line: [at(inch(147), inch(250)), at(W, inch(250))],
        depth: known(inch(14)),
        clear: known(inch(6)),
      },
    ],
    slope: unknown,
  },
  bay: {
    outline: box(0, 0, W, D),
    walls: [
      { name: "back wall", from: at(0, 0), to: at(W, 0) },
      { name: "left wall", from: at(0, 0), to: at(0, D) },
      { name: "right wall", from: at(W, 0), to: at(W, D) },
      { name: "front", from: at(0, D), to: at(W, D) },
    ],
    doors: [
      { name: "garage door", from: at(inch(48), D), to: at(inch(240), D), height: known(inch(96)) },
      { name: "side door", from: at(W, inch(24)), to: at(W, inch(60)), height: unknown },
    ],
    posts: [],
    ceiling: known(inch(150)),
    walkway: unknown,
    obstacles: [{ name: "bench", outline: box(inch(12), 0, inch(108), inch(26)) }],
  },
  position: { left, right },
  vehicles: [],
  pour: {
    date: "2026-05-18",
    strength: known(4000 * 0.00689476),
    slump: known(inch(4)),
    air: unknown,
    cement: unknown,
    fibre: unknown,
    temperatures: [],
    waste: unknown,
  },
  installation: undefined,
  visits: [],
  ...nothingWished,
  choices: {
    uneven: unknown,
    dynamicFactor: unknown,
    workForce: unknown,
    bedding: unknown,
    firstCrackMargin: unknown,
    lifts: [],
  },
};

/** What the assessment's layout is for a job that has a position, both columns facing inward. */
export const layoutOf = (job: Job): Layout => {
  const place = (side: "left" | "right", centre: Point) => {
    const inward = side === "left" ? 1 : -1;
    const put = (p: Point): Point => at(centre.x + inward * p.x, centre.y + p.y);
    return {
      side,
      centre,
      outline: (job.lift.base.outline ?? []).map(put),
      anchors: job.lift.anchors.holes.map(({ id, at: p }) => ({
        id: `${side === "left" ? "L" : "R"}${id}`,
        at: put(p),
      })),
    };
  };
  return {
    outline: job.bay.outline,
    bases: job.position ? [place("left", job.position.left), place("right", job.position.right)] : [],
    zones: job.floor.zones.map(({ name, outline, thickness, state, kind }) => ({
      name,
      outline,
      state,
      kind,
      thickness: thickness.known ? thickness.value : undefined,
    })),
  };
};

export const assessmentOf = (job: Job, more: Partial<Assessment> = {}): Assessment => ({
  format: 1,
  title: job.title,
  outcome: "pour",
  sentence:
    "Pour the slab with two thick pads as drawn; drill when the maker's days have passed and the strength is shown.",
  reasons: ["The floor is still to be poured."],
  conditions: ["Thickness is measured at the forms before the truck comes."],
  stops: [],
  page: {
    verdict: "meets",
    lines: [
      {
        id: "thickness",
        title: "Thickness",
        result: "meets",
        asked: "at least 4 1/4 in",
        found: "5 5/8 in at the left base",
        why: "",
      },
      {
        id: "strength",
        title: "Strength",
        result: "not-shown",
        asked: "at least 3,000 psi",
        found: "no record",
        why: "",
      },
      { id: "joint", title: "Distance to a joint", result: "meets", asked: "at least 8 in", found: "21 in", why: "" },
    ],
  },
  margin: { verdict: "ample", sentence: "", checks: [], best: [], information: [], cases: [], lean: [], unable: [] },
  missing: [],
  remedies: [],
  layout: layoutOf(job),
  cautions: [
    "Compare with the local building code; a permit may be needed.",
    "A licensed engineer decides on anything outside the maker's page.",
  ],
  ...more,
});

/** A standing 5 1/2 in floor with readings, a joint and a crack. */
export const standing: Job = {
  ...newPour,
  title: "Quarry Road shop, bay 2",
  floor: {
    ...newPour.floor,
    state: "standing",
    thickness: known(inch(5.5)),
    zones: [],
    bars: [],
    reinforcement: choice("mesh"),
    poured: "2019-06-01",
    readings: [
      reading("left", 5.625),
      reading("left", 5.75),
      reading("right", 5.875),
      reading("right", 6),
      { ...reading("middle", 5.5), at: at(inch(147), inch(60)) },
    ],
    joints: [
      {
        name: "J1",
        kind: "saw-cut",
        from: at(inch(147), 0),
        to: at(inch(147), D),
        transfer: unknown,
        state: "standing",
      },
      {
        name: "J2",
        kind: "construction",
        from: at(0, inch(170)),
        to: at(W, inch(170)),
        transfer: unknown,
        state: "standing",
      },
    ],
    cracks: [
      {
        name: "",
        line: [at(W, inch(90)), at(inch(262), inch(104)), at(inch(240), inch(96))],
        width: known(0.3),
        step: unknown,
        seen: [],
      },
    ],
    pipes: [],
  },
  pour: undefined,
};

function reading(near: "left" | "right" | "middle", inches: number) {
  return {
    at: undefined,
    near,
    thickness: known(inch(inches)),
    method: "drill",
    end: "through",
    under: choice("gravel" as const),
    place: "slab",
    note: undefined,
  } as const;
}

export const standingAssessment: Assessment = assessmentOf(standing, {
  outcome: "accept-if",
  sentence: "This floor carries the lift if its strength is shown.",
  reasons: ["The thickness meets the maker's page at both bases.", "The strength is not shown."],
  conditions: ["Show 3,000 psi by a delivery ticket, cylinders or cores."],
});

/** A metric cut-out: one strip under both columns in an old floor. */
export const strip: Job = {
  ...newPour,
  title: "Werkhof Lindental, Platz 4",
  units: "si",
  floor: {
    ...newPour.floor,
    state: "standing",
    thickness: known(110),
    heat: choice("none"),
    zones: [
      zone("Strip", box(left.x - 800, left.y - 800, right.x + 800, right.y + 800), {
        kind: "strip",
        thickness: known(300),
        sideSlope: 0,
        tied: choice("dowelled"),
      }),
    ],
    bars: [{ size: "12 mm", spacing: known(300), depth: known(240), direction: "both" }],
    joints: [
      {
        name: "F1",
        kind: "construction",
        from: at(0, inch(210)),
        to: at(W, inch(210)),
        transfer: unknown,
        state: "standing",
      },
    ],
    readings: [],
    pipes: [],
  },
};
