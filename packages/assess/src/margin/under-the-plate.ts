import { bearing, modulusOfRupture, plainTwoWayShear } from "@floorworthy/engine/codes/aci318-19";
import { type Point, polygonArea, type Segment, segmentDistance, sides } from "@floorworthy/engine/geometry";
import { type Check, fromBase, type Term, toBase } from "@floorworthy/engine/quantities";
import {
  closedForms,
  controlPerimeter,
  edgeDistances,
  overturningCollapse,
  plainMoments,
  type SlabOnGround,
  stiffnessRadius,
} from "@floorworthy/engine/slabs";
import type { Job } from "@floorworthy/job";
import type { MarginCheck } from "../assessment.ts";
import { barriersFor } from "../barriers.ts";
import { term } from "../facts/print.ts";
import { zoneUnder } from "../facts/thickness.ts";
import { baseAxis, boxOf } from "../layout.ts";
import { baseWords } from "./base-words.ts";
import { type BaseCase, pullOf, pushOf } from "./cases.ts";
import { concreteAt, type JudgedInputs } from "./inputs.ts";
import { firstCrackMargin, LOAD_FACTOR, NU } from "./practice.ts";

type Weight = MarginCheck["weight"];
type Concrete = JudgedInputs["concrete"][number];

/** Under one base plate: bearing at the toe, punching of the pressed part; the closed forms and the collapse beside. */
export const plateChecks = (job: Job, inputs: JudgedInputs, c: BaseCase, E: number, weight: Weight): MarginCheck[] => {
  const concrete = concreteAt(inputs, c.side);
  const governs = `${baseWords(c.side)}, ${c.caseName}`;
  const toe = bearingCheck(job, concrete, c, weight, governs);
  if (c.rest.likely.contactZone.length === 0) return [toe];
  const slab = { E, nu: NU, h: concrete.h, k: inputs.k };
  return [
    toe,
    ...punchingChecks(job, concrete, c, weight, governs),
    ...closedFormChecks(job, concrete, slab, c, governs),
    collapseCheck(concrete, slab, c, governs),
  ];
};

const bearingCheck = (job: Job, { f, fc }: Concrete, c: BaseCase, weight: Weight, governs: string): MarginCheck => {
  const allowed = (0.65 * toBase(bearing(fromBase(f, "psi"), 1), "psi")) / LOAD_FACTOR;
  const clause = "ACI 318-19 22.8.3.2";
  return {
    id: "bearing",
    title: "Bearing of the base plate at its toe",
    group: "base plate",
    weight,
    demand: term("p_max", "largest pressure under the plate", c.rest.likely.maxPressure, "stress", job.units, {
      clause: "rigid plate on elastic bedding (docs/theory/frames.md)",
    }),
    capacity: term("φ 0.85 f'c / 1.6", "service allowance in bearing", allowed, "stress", job.units, {
      clause: `${clause}, φ 0.65`,
      formula: "0.65 × 0.85 f'c / 1.6",
      from: [fc],
    }),
    ratio: c.rest.likely.maxPressure / allowed,
    clause,
    governs,
  };
};

/** Plain concrete in two-way shear round the pressed part, the perimeter cut off at the edges of the concrete. */
const punchingChecks = (job: Job, concrete: Concrete, c: BaseCase, weight: Weight, governs: string): MarginCheck[] => {
  const { h, f, fc, thickness } = concrete;
  // the plate's own axes: round a turned plate the plan's box would be too large
  const own = turnedBack(baseAxis(job, c.side));
  const patch = pressedBox(c, own);
  const outline = (zoneUnder(job, c.base)?.outline ?? job.bay.outline ?? []).map(own);
  const around = controlPerimeter(patch, h / 2, edgeDistances(patch, outline, h / 2));
  // a block hardly wider than the plate has nothing to punch through: the ground pressure judges it
  if (around.length === 0) return [];
  const [b0, depth] = [fromBase(around.length, "in"), fromBase(h, "in")];
  const allowed = toBase((0.6 * plainTwoWayShear(fromBase(f, "psi"), b0, depth, around.beta)) / LOAD_FACTOR, "lb");
  const push = pushOf(c);
  const check: MarginCheck = {
    id: "punching",
    title: "Punching of the slab under the pressed part of the plate",
    group: "slab",
    weight,
    demand: term("C", "force the plate presses with", push, "force", job.units, { formula: "P + ΣT" }),
    capacity: term("φ Vn / 1.6", "service allowance in two-way shear", allowed, "force", job.units, {
      clause: "ACI 318-19 Table 14.5.5.1, φ 0.60",
      formula: "0.60 × min(4/3 + 8/(3β), 2.66) √f'c b₀ h / 1.6 (lb, in, psi)",
      worked: `b₀ = ${b0.toFixed(1)} in, β = ${around.beta.toFixed(2)}`,
      from: [fc, thickness],
    }),
    ratio: push / allowed,
    clause: "ACI 318-19 14.5.5.1",
    governs,
  };
  return [check];
};

const pressedBox = (c: BaseCase, own: (p: Point) => Point) => {
  const { x, y } = c.base.centre;
  return boxOf(c.rest.likely.contactZone.flat().map((p) => own({ x: p.x + x, y: p.y + y })));
};

const turnedBack =
  (angle: number) =>
  ({ x, y }: Point): Point => ({
    x: x * Math.cos(angle) + y * Math.sin(angle),
    y: y * Math.cos(angle) - x * Math.sin(angle),
  });

const pressedRadius = (c: BaseCase): number =>
  Math.sqrt(c.rest.likely.contactZone.reduce((sum, zone) => sum + polygonArea(zone), 0) / Math.PI);

const ruptureOf = ({ f }: Concrete): number => toBase(modulusOfRupture(fromBase(f, "psi")), "psi");

/** Beside the plate solver: the pressing force alone on a circle, far from edges and, with an edge near, touching it. */
const closedFormChecks = (
  job: Job,
  concrete: Concrete,
  slab: SlabOnGround,
  c: BaseCase,
  governs: string,
): MarginCheck[] => {
  const forms = closedForms(slab, pushOf(c), pressedRadius(c));
  const allowed = ruptureOf(concrete) / firstCrackMargin(job);
  const capacity = term(
    "f_r/m",
    "stress with the asked margin m against the first crack",
    allowed,
    "stress",
    job.units,
    {
      clause: "ACI 318-19 19.2.3.1; practice of ACI 360R, from memory",
      from: [concrete.fc],
    },
  );
  const beside = (place: string, { stress }: { readonly stress: Term }): MarginCheck => ({
    id: `closed-form-${place}`,
    title: `First crack by the closed form, ${place}`,
    group: "slab",
    weight: "advice",
    demand: { ...term("σ", stress.words, stress.value, "stress", job.units), ...unfolded(stress) },
    capacity,
    ratio: stress.value / allowed,
    clause: stress.clause ?? "",
    governs,
  });
  const interior = beside("interior", forms.interior);
  const l = stiffnessRadius(slab);
  if (!edgeIsNear(job, c, l)) return [interior];
  const edge = [interior, beside("edge", forms.edge)];
  return cornerIsNear(job, c, l) ? [...edge, beside("corner", forms.corner)] : edge;
};

const unfolded = ({ clause, formula, worked, from }: Term): Partial<Term> => ({
  ...(clause ? { clause } : {}),
  ...(formula ? { formula } : {}),
  ...(worked ? { worked } : {}),
  ...(from ? { from } : {}),
});

const edgeIsNear = (job: Job, c: BaseCase, l: number): boolean =>
  barriersFor(job, c.base).some((barrier) => sides(c.base.outline).some((side) => segmentDistance(side, barrier) < l));

/** A support that rests on the floor, less than half an l from where two lines meet that end the concrete. */
const cornerIsNear = (job: Job, c: BaseCase, l: number): boolean => {
  if (job.lift.kind === "two-post") return false;
  const near = barriersFor(job, c.base).filter((b) =>
    sides(c.base.outline).some((side) => segmentDistance(side, b) < l / 2),
  );
  return near.some((p) => near.some((q) => Math.abs(turnBetween(p, q)) > Math.sin(Math.PI / 6)));
};

const turnBetween = (p: Segment, q: Segment): number => {
  const [px, py, qx, qy] = [p.b.x - p.a.x, p.b.y - p.a.y, q.b.x - q.a.x, q.b.y - q.a.y];
  return (px * qy - py * qx) / (Math.hypot(px, py) * Math.hypot(qx, qy));
};

/** By yield lines, plain concrete: the lower bound never flatters. */
const collapseCheck = (concrete: Concrete, slab: SlabOnGround, c: BaseCase, governs: string): MarginCheck => {
  const check: Check = overturningCollapse(
    { force: pushOf(c), radius: pressedRadius(c), place: "interior" },
    { force: pullOf(c), radius: Math.sqrt(polygonArea(c.base.outline) / 4 / Math.PI), place: "interior" },
    plainMoments(ruptureOf(concrete), concrete.h),
    stiffnessRadius(slab),
    "lower",
  );
  return { ...check, group: "slab", weight: "advice", governs: `${governs}: ${check.governs ?? ""}` };
};
