import { elasticModulus, modulusOfRupture } from "@floorworthy/engine/codes/aci318-19";
import {
  type Point,
  type Polygon,
  pointInPolygon,
  polygonArea,
  type Rect,
  signedArea,
} from "@floorworthy/engine/geometry";
import { inscribedRects } from "@floorworthy/engine/pads";
import {
  type Floor,
  type FloorCase,
  type FloorLoad,
  type FloorResult,
  type StressPeak,
  solveFloor,
} from "@floorworthy/engine/plates";
import { fromBase, isUnable, type Term, toBase, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { MarginCheck } from "../assessment.ts";
import { term } from "../facts/print.ts";
import { zoneUnder } from "../facts/thickness.ts";
import { boxOf } from "../layout.ts";
import { keepWorst } from "./anchors.ts";
import { type BaseCase, most, pullOf, pushOf } from "./cases.ts";
import { concreteAt, type JudgedInputs } from "./inputs.ts";
import { leanOf } from "./lean.ts";
import { type Panel, panelsOf } from "./panel.ts";
import { firstCrackMargin, NU } from "./practice.ts";
import { clippedTo, type SlabPiece, slabPieces } from "./slab-pieces.ts";
import { plateChecks } from "./under-the-plate.ts";

/** 150 pcf */
const UNIT_WEIGHT = 23.56e-6;

export interface SlabAnswer {
  readonly checks: readonly MarginCheck[];
  /** the largest of each column's head */
  readonly lean: readonly Term[];
  readonly unable: readonly Unable[];
}

/** The slab, or each pad that stands alone, under its bases at once. Of each check the worst case is kept. */
export const slabChecks = (
  job: Job,
  inputs: JudgedInputs,
  cases: readonly BaseCase[],
  weight: MarginCheck["weight"],
): SlabAnswer => {
  const found = new Map<string, MarginCheck>();
  const leans = new Map<string, Term>();
  const unable: Unable[] = [];
  const weakest = Math.min(...inputs.concrete.map(({ f }) => f));
  const E = toBase(elasticModulus(fromBase(weakest, "psi")), "psi");
  for (const { panel, piece, own, results } of solvedPanels(job, inputs, cases, E)) {
    if (isUnable(results)) unable.push({ ...results, place: `${piece.name}: ${results.place}` });
    else
      for (const result of results) {
        const loaded = own.filter((c) => c.caseId === result.name);
        const caseName = loaded[0]?.caseName ?? result.name;
        for (const check of resultChecks(job, inputs, panel, piece, result, caseName, weight)) keepWorst(found, check);
        for (const c of loaded.filter((one) => holds(piece, one.base.centre)))
          keepLargest(leans, c.side, leanOf(job, c, result));
      }
  }
  for (const c of cases) for (const check of plateChecks(job, inputs, c, E, weight)) keepWorst(found, check);
  return { checks: [...found.values()], lean: [...leans.values()], unable };
};

const holds = ({ within }: SlabPiece, p: Point): boolean => !within || pointInPolygon(p, within) !== "outside";

const keepLargest = (found: Map<string, Term>, side: string, lean: Term | undefined): void => {
  if (lean && lean.value > (found.get(side)?.value ?? -1)) found.set(side, lean);
};

/** Each piece of concrete that works by itself, solved under the cases that govern it. */
export const solvedPanels = (job: Job, inputs: JudgedInputs, cases: readonly BaseCase[], E: number) => {
  const bases = [...new Map(cases.map((c) => [c.side, c.base])).values()];
  const thickness = bases.map(({ side }) => concreteAt(inputs, side).h);
  return panelsOf(job, bases, thickness, E, inputs.k).flatMap((panel) => {
    const own = cases.filter((c) => panel.bases.some((base) => base.side === c.side));
    const slab = { E, nu: NU, h: panel.thickness, k: inputs.k };
    return slabPieces(job, panel, slab, inputs.end).map((piece) => {
      const loads = governing(own).map((id) => loadsOf(own, id, piece.within));
      const focus = panel.bases.map((base) => boxOf(base.outline));
      const floor = floorOf(job, inputs, panel, piece, E);
      return { panel, piece, own, floor, results: solveFloor(floor, loads, { support: "pushes-only", focus }) };
    });
  });
};

/** Cases that press, pull or tip most: the slab is solved for these. */
export const governing = (cases: readonly BaseCase[]): string[] => [
  ...new Set(
    [most(cases, pushOf), most(cases, pullOf), most(cases, (c) => Math.abs(c.reaction.Mx))].flatMap((c) =>
      c ? [c.caseId] : [],
    ),
  ),
];

const floorOf = (job: Job, inputs: JudgedInputs, panel: Panel, piece: SlabPiece, E: number): Floor => ({
  outline: piece.rect,
  ...(piece.within ? { within: piece.within } : {}),
  thickness: panel.thickness,
  zones: panel.alone === "alone" ? [] : castZones(job, inputs, panel, piece.rect),
  E,
  nu: NU,
  k: inputs.k,
  unitWeight: UNIT_WEIGHT,
  joints: piece.joints,
});

const castZones = (job: Job, inputs: JudgedInputs, panel: Panel, within: Rect): { rect: Rect; thickness: number }[] => {
  const seen = new Map<string, { rect: Rect; thickness: number }[]>();
  panel.bases.forEach((base) => {
    const zone = zoneUnder(job, base);
    if (!zone || zone.kind === "slab") return;
    const thickness = concreteAt(inputs, base.side).h;
    const rects = inscribedRects(zone.outline)
      .map((rect) => ({
        x0: Math.max(rect.x0, within.x0),
        y0: Math.max(rect.y0, within.y0),
        x1: Math.min(rect.x1, within.x1),
        y1: Math.min(rect.y1, within.y1),
      }))
      .filter(({ x0, x1, y0, y1 }) => x1 > x0 && y1 > y0);
    seen.set(
      zone.name,
      rects.map((rect) => ({ rect, thickness })),
    );
  });
  return [...seen.values()].flat();
};

/** All loads of a case, or what of them stands on a piece cut aslant. */
export const loadsOf = (cases: readonly BaseCase[], id: string, within?: Polygon): FloorCase => {
  const loads = cases.filter((c) => c.caseId === id).flatMap(loadsOfBase);
  return { name: id, loads: within ? loads.flatMap((load) => loadOn(load, within)) : loads };
};

const loadOn = (load: FloorLoad, within: Polygon): FloorLoad[] => {
  if (load.kind === "point") return pointInPolygon(load, within) === "outside" ? [] : [load];
  const anticlockwise = signedArea(load.polygon) > 0 ? load.polygon : load.polygon.toReversed();
  const polygon = clippedTo(anticlockwise, within);
  return polygon.length >= 3 && polygonArea(polygon) > 1 ? [{ ...load, polygon }] : [];
};

const loadsOfBase = ({ base, rest: { forSlab: contact } }: BaseCase): FloorLoad[] => {
  const { x, y } = base.centre;
  const { p0, px, py } = contact.pressure;
  return [
    ...contact.contactZone.map(
      (zone): FloorLoad => ({
        kind: "pressure",
        polygon: zone.map((p) => ({ x: p.x + x, y: p.y + y })),
        p0: p0 - px * x - py * y,
        px,
        py,
      }),
    ),
    ...base.anchors.flatMap(({ at }, i): FloorLoad[] => {
      const T = contact.anchorTension[i]?.T ?? 0;
      return T > 0 ? [{ kind: "point", x: at.x, y: at.y, P: -T }] : [];
    }),
  ];
};

/** Pads count by their upright part: what slopes out of it or reaches under the slab would help and is left out. */
const uprightParts = (job: Job, { bases }: Panel): Term[] => {
  const zones = new Set(bases.flatMap((base) => zoneUnder(job, base) ?? []));
  return [...zones]
    .filter((zone) => zone.sideSlope > 0 || (zone.tied.known && zone.tied.value === "undercut"))
    .map((zone) => {
      const box = boxOf(zone.outline);
      const words = `${zone.name} counts by its upright part only; ${zone.sideSlope > 0 ? "its sloped sides are" : "what reaches under the slab is"} left out: width`;
      return term("b", words, box.x1 - box.x0, "length", job.units);
    });
};

const resultChecks = (
  job: Job,
  inputs: JudgedInputs,
  panel: Panel,
  piece: SlabPiece,
  result: FloorResult,
  caseName: string,
  weight: MarginCheck["weight"],
): MarginCheck[] => {
  const { units } = job;
  const { f, fc } = inputs.concrete.reduce((a, b) => (b.f < a.f ? b : a));
  const fr = toBase(modulusOfRupture(fromBase(f, "psi")), "psi");
  const crackMargin = firstCrackMargin(job);
  const g = result.governing;
  const peak = [g.stressBottomAveraged, g.stressTopAveraged, g.thinSideOfPadEdge, g.thickSideOfPadEdge]
    .filter((p): p is StressPeak => p !== undefined)
    .reduce((a, b) => (b.value > a.value ? b : a));
  const rupture = term("f_r", "modulus of rupture", fr, "stress", units, {
    clause: "ACI 318-19 19.2.3.1",
    formula: "7.5 √f'c (psi)",
    worked: `7.5 × √${Math.round(fromBase(f, "psi"))}`,
    from: [fc],
  });
  const allowed = term(
    "f_r/m",
    "stress with the asked margin m against the first crack",
    fr / crackMargin,
    "stress",
    units,
    { clause: "practice of ACI 360R, from memory", formula: "f_r / m", worked: `m = ${crackMargin}`, from: [rupture] },
  );
  const demand = term("σ", `tensile stress at the ${peak.face} of the ${piece.name}`, peak.value, "stress", units, {
    clause: "plate on ground that only pushes (docs/theory/plates.md)",
    formula: "6 m / h²",
    worked: `6 × ${Math.round(peak.moment)} N / (${Math.round(peak.thickness)} mm)²`,
    from: [...inputs.concrete.map(({ thickness }) => thickness), ...piece.shares, ...uprightParts(job, panel)],
  });
  const ground = term(
    "q",
    `ground pressure under the ${piece.name}, own weight included`,
    g.groundPressure.value,
    "pressure",
    units,
    { clause: "plate on ground that only pushes (docs/theory/plates.md)" },
  );
  return [
    {
      id: "slab-first-crack",
      title: "First crack of the slab",
      group: "slab",
      weight,
      demand,
      capacity: allowed,
      ratio: peak.value / (fr / crackMargin),
      clause: "ACI 318-19 19.2.3.1, ACI 360R practice",
      governs: `${piece.name}, ${caseName}`,
    },
    {
      id: "ground-pressure",
      title: "Pressure on the ground",
      group: "ground",
      weight,
      demand: ground,
      capacity: inputs.bearing.term,
      ratio: g.groundPressure.value / inputs.bearing.value,
      clause: inputs.bearing.term.basis ?? "",
      governs: `${piece.name}, ${caseName}`,
    },
  ];
};
