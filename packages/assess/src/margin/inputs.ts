import type { AnchorProduct } from "@floorworthy/engine/anchors";
import type { ColumnFrame, LiftDuty, PadSet, SoftBound } from "@floorworthy/engine/frames";
import { type Term, type Unable, unable } from "@floorworthy/engine/quantities";
import {
  type Default,
  defaults,
  type Job,
  presumptiveBearing,
  type Quantity,
  assumed as standIn,
} from "@floorworthy/job";
import type { Facts } from "../facts/facts.ts";
import { basisWords, type End, loadEnd, strengthEnd } from "../facts/known.ts";
import { term } from "../facts/print.ts";
import { strengthFor } from "../facts/strength.ts";
import { thicknessFor } from "../facts/thickness.ts";

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
  const load = (fact: Quantity, words: string, fallback?: Default): number => {
    if (fact.known) return loadEnd(fact, end);
    if (fallback) return taken(words, fallback, assumed);
    lacking.push(words);
    return Number.NaN;
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
  const columnWeight = lift.columnWeight.known
    ? loadEnd(lift.columnWeight, end)
    : taken("weight of a column, as a share of the rated load", defaults.columnWeightShare, assumed) * rated;
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
      pickUpHeight: load(lift.pickupHeight, "carriage height at pick-up", defaults.pickupHeight),
      fullRise: Math.min(
        load(lift.fullHeight, "carriage height at full rise", defaults.fullHeight),
        tied ? tieHeight : Number.POSITIVE_INFINITY,
      ),
      unevenShare: job.choices.uneven.known ? job.choices.uneven.value : defaults.unevenShare.value,
      workForce: load(job.choices.workForce, "work force on the vehicle", defaults.workForce),
    },
    shock: load(job.choices.dynamicFactor, "shock factor in hard use", defaults.dynamicFactor),
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
  const set = (kind: PadSet["kind"], reach: Quantity, spacing: Default): PadSet[] =>
    reach.known
      ? [
          {
            kind,
            reach: loadEnd(reach, end),
            padSpacing: loadEnd(
              lift.padSpacing.known
                ? lift.padSpacing
                : standIn({ ...spacing, low: spacing.value, high: spacing.value }),
              end,
            ),
            weight,
          },
        ]
      : [];
  return [
    ...set("car", lift.reachCar, defaults.padSpacingCar),
    ...set("frame-truck", lift.reachTruck, defaults.padSpacingTruck),
  ];
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

const groundOf = (job: Job, end: End, assumed: string[]): Pick<MarginInputs, "k" | "bearing"> => {
  const { ground } = job.floor;
  const onFoam = ground.foam.known && ground.foam.value !== "none";
  const onWetClay =
    ground.wet.known && ground.wet.value === "wet" && !(ground.soil.known && ground.soil.value !== "clay");
  const soft = onFoam || onWetClay;
  const k = ground.k.known
    ? strengthEnd(ground.k, end)
    : taken("modulus of subgrade reaction", soft ? defaults.subgradeModulusSoft : defaults.subgradeModulus, assumed);
  const presumed = presumptiveBearing[ground.soil.known ? ground.soil.value : "unknown"];
  const value = ground.bearing.known ? strengthEnd(ground.bearing, end) : standIn(presumed).value;
  const basis = ground.bearing.known
    ? basisWords(ground.bearing.basis)
    : `assumed: ${presumed.why} (${presumed.source})`;
  return {
    k,
    bearing: { value, term: term("q_a", "allowable ground pressure", value, "pressure", job.units, { basis }) },
  };
};

/** A default in base units, noted among what was assumed. */
const taken = (words: string, given: Default, assumed: string[]): number => {
  assumed.push(`${words}: ${given.value} ${given.unit}, ${given.why} (${given.source})`);
  return standIn(given).value;
};
