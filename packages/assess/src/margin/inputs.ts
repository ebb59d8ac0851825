import type { AnchorProduct } from "@floorworthy/engine/anchors";
import type { ColumnFrame, LiftDuty, PadSet, SoftBound } from "@floorworthy/engine/frames";
import { type Term, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job, Quantity } from "@floorworthy/job";
import type { Facts } from "../facts/facts.ts";
import { basisWords, type End, loadEnd, strengthEnd } from "../facts/known.ts";
import { term } from "../facts/print.ts";
import { strengthFor } from "../facts/strength.ts";
import { thicknessFor } from "../facts/thickness.ts";

const LB = 4.4482216152605;
const IN = 25.4;
const PSI = LB / IN ** 2;
const PCI = PSI / IN;
const STEEL = 200_000;

/** Everything the margin calculates with, at one end of every uncertain fact. Base units. */
export interface MarginInputs {
  readonly frame: ColumnFrame;
  readonly soft: SoftBound | undefined;
  readonly duty: LiftDuty;
  /** shock factor of hard use */
  readonly shock: number;
  readonly product: AnchorProduct;
  /** per base, in the order of the bases: mm, MPa */
  readonly concrete: readonly { readonly thickness: Term; readonly fc: Term; readonly h: number; readonly f: number }[];
  /** N/mm³ */
  readonly k: number;
  readonly bearing: { readonly value: number; readonly term: Term };
  /** facts taken from a default, in words */
  readonly assumed: readonly string[];
}

export const marginInputs = (job: Job, facts: Facts, end: End): MarginInputs | Unable => {
  const { lift, units } = job;
  const lacking: string[] = [];
  const assumed: string[] = [];
  const load = (fact: Quantity, words: string, fallback?: { value: number; why: string }): number => {
    if (fact.known) return loadEnd(fact, end);
    if (!fallback) lacking.push(words);
    else assumed.push(`${words}: ${fallback.why}`);
    return fallback?.value ?? Number.NaN;
  };
  if (lift.kind !== "two-post")
    return unable(
      "margin",
      `A ${lift.kind} lift is judged by its maker's page only; its base loads are not computed yet.`,
    );
  if (!lift.top.known) assumed.push("top of the lift: free-standing, the worse, until somebody looks");
  const rated = load(lift.rated, "rated load of the lift");
  const spacing = load(lift.spacing, "spacing of the columns");
  const pads = padSets(job, rated, end);
  if (pads.length === 0) lacking.push("reach of the arms (pad line to column)");
  const columnWeight = load(lift.columnWeight, "weight of a column", {
    value: 0.11 * rated,
    why: "11 % of the rated load (common practice, no source)",
  });
  const tied = tieCounts(job);
  const tieHeight = tied ? load(lift.tieHeight, "height of the overhead beam") : Number.NaN;
  if (!lift.base.outline) lacking.push("base plate");
  if (lift.anchors.holes.length === 0) lacking.push("hole pattern of the base plate");
  if (facts.bases.length === 0) lacking.push("position of the columns");
  const product = productOf(job, end, lacking);
  facts.thickness.forEach((under) => {
    if (thicknessFor(under, end) === undefined) lacking.push(`thickness at the ${under.side} base`);
  });
  if (lacking.length > 0) return unable("margin", `Not known: ${[...new Set(lacking)].join(", ")}.`);
  const frame: ColumnFrame = {
    top: tied ? "overhead-tied" : "free-standing",
    spacing,
    columnWeight,
    reach: pads[0]!.reach,
    baseStiffness: "rigid",
    ...(tied ? { tieHeight } : {}),
  };
  return {
    frame,
    soft: softBound(job),
    duty: {
      weight: rated,
      dynamicFactor: job.choices.dynamicFactor.known ? job.choices.dynamicFactor.value : 1,
      pads,
      pickUpHeight: load(lift.pickupHeight, "carriage height at pick-up", {
        value: 28 * IN,
        why: "28 in (common practice, no source)",
      }),
      fullRise: load(lift.fullHeight, "carriage height at full rise", {
        value: tied ? Math.min(90 * IN, 0.65 * tieHeight) : 90 * IN,
        why: "90 in, at most 0.65 of the beam's height (common practice, no source)",
      }),
      unevenShare: job.choices.uneven.known ? job.choices.uneven.value : 0.6,
      workForce: load(job.choices.workForce, "work force on the vehicle", {
        value: 150 * LB,
        why: "150 lb (common practice, no source)",
      }),
    },
    shock: load(job.choices.dynamicFactor, "shock factor in hard use", {
      value: 1.15,
      why: "1.15, the middle of 1.1 to 1.25 (common practice, no source)",
    }),
    product: product!,
    concrete: facts.thickness.map((under, i) =>
      concreteUnder(
        under.side,
        thicknessFor(under, end)!,
        under.why,
        strengthFor(facts.strength[i]!, end),
        facts.strength[i]!.why,
        units,
      ),
    ),
    ...groundOf(job, end, assumed),
    assumed,
  };
};

const concreteUnder = (side: string, h: number, hWhy: string, f: number, fWhy: string, units: Job["units"]) => ({
  h,
  f,
  thickness: term("h", `thickness that counts at the ${side} base`, h, "length", units, { basis: hWhy }),
  fc: term("f'c", `compressive strength that counts at the ${side} base`, f, "stress", units, { basis: fWhy }),
});

/** The beam counts unless somebody recorded that it is not fitted or the columns are not plumb. */
export const tieCounts = ({ lift, installation }: Job): boolean =>
  lift.top.known &&
  lift.top.value === "overhead-tied" &&
  !(installation?.beam.known && installation.beam.value === "not-fitted") &&
  !(installation?.plumb.known && installation.plumb.value === "not-plumb");

const padSets = ({ lift }: Job, weight: number, end: End): PadSet[] => {
  const padSpacing = lift.padSpacing.known ? loadEnd(lift.padSpacing, end) : 60 * IN;
  const set = (kind: PadSet["kind"], reach: Quantity): PadSet[] =>
    reach.known ? [{ kind, reach: loadEnd(reach, end), padSpacing, weight }] : [];
  return [...set("car", lift.reachCar), ...set("frame-truck", lift.reachTruck)];
};

/** With the column's stiffness known, bases that give a little are the other bound: the margin keeps the worse of both. */
const softBound = ({ lift }: Job): SoftBound | undefined =>
  lift.columnInertia.known ? { baseStiffness: 5e9, columnEI: STEEL * lift.columnInertia.value } : undefined;

const productOf = ({ lift }: Job, end: End, lacking: string[]): AnchorProduct | undefined => {
  const sheet = lift.anchors.product;
  const hef = sheet.effectiveEmbedment;
  if (!sheet.diameter.known) lacking.push("diameter of the anchors");
  if (!hef.known) lacking.push("effective embedment of the anchors");
  if (!sheet.diameter.known || !hef.known) return undefined;
  const kind = sheet.kind.known ? (sheet.kind.value === "sleeve" ? "expansion" : sheet.kind.value) : "expansion";
  const optional = {
    hnom: sheet.nominalEmbedment,
    Ase: sheet.steelArea,
    futa: sheet.steelStrength,
    fya: sheet.steelYield,
    NpCracked: sheet.pulloutCracked,
    NpUncracked: sheet.pulloutUncracked,
    cmin: sheet.minimumEdge,
    smin: sheet.minimumSpacing,
    hmin: sheet.minimumThickness,
    cac: sheet.criticalEdge,
  };
  const known = Object.fromEntries(
    Object.entries(optional).flatMap(([key, fact]) => (fact.known ? [[key, strengthEnd(fact, end)]] : [])),
  );
  return {
    kind,
    da: sheet.diameter.value,
    hef: strengthEnd(hef, end),
    ...known,
    ...(sheet.category.known ? { category: Number(sheet.category.value) as 1 | 2 | 3 } : {}),
    ...(sheet.ductile.known ? { ductile: sheet.ductile.value } : {}),
  };
};

/** Presumptive pressures in the manner of IRC Table R401.4.1, from memory; organic soil and unknown ground are kept low. */
const presumptive: Record<string, number> = {
  rock: 12_000,
  gravel: 3000,
  sand: 2000,
  silt: 1500,
  clay: 1500,
  organic: 400,
};

const groundOf = (job: Job, end: End, assumed: string[]): Pick<MarginInputs, "k" | "bearing"> => {
  const { ground } = job.floor;
  const soft =
    (ground.foam.known && ground.foam.value !== "none") ||
    (ground.wet.known && ground.wet.value === "wet" && !(ground.soil.known && ground.soil.value !== "clay"));
  if (!ground.k.known)
    assumed.push(`ground: k = ${soft ? "50 pci on foam or wet clay" : "100 pci"} (common practice, no source)`);
  const k = ground.k.known ? strengthEnd(ground.k, end) : (soft ? 50 : 100) * PCI;
  const soil = ground.soil.known ? ground.soil.value : "clay";
  const value = ground.bearing.known ? strengthEnd(ground.bearing, end) : (presumptive[soil]! * PSI) / 144;
  const basis = ground.bearing.known
    ? basisWords(ground.bearing.basis)
    : `assumed: presumptive for ${ground.soil.known ? soil : "soil nobody has looked at"} (IRC R401.4.1, from memory)`;
  return {
    k,
    bearing: { value, term: term("q_a", "allowable ground pressure", value, "pressure", job.units, { basis }) },
  };
};
