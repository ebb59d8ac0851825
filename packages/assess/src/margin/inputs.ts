import type { AnchorProduct } from "@floorworthy/engine/anchors";
import type { ColumnFrame, LiftDuty, PadSet, SoftBound } from "@floorworthy/engine/frames";
import { isUnable, type Term, type Unable, unable } from "@floorworthy/engine/quantities";
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
import { baseWords } from "./base-words.ts";
import type { SupportDuty } from "./reactions.ts";

const STEEL = 200_000;

/** What every kind of lift is judged with, at one end of every uncertain fact. Base units. */
interface FloorInputs {
  readonly end: End;
  /** per base, in the order of the bases: mm, MPa */
  readonly concrete: readonly { readonly thickness: Term; readonly fc: Term; readonly h: number; readonly f: number }[];
  /** names of the bases, in the order of `concrete` */
  readonly sides: readonly string[];
  /** N/mm³ */
  readonly k: number;
  readonly bearing: { readonly value: number; readonly term: Term };
  /** facts taken from a default, in words */
  readonly assumed: readonly string[];
}

/** A two-post lift. */
export interface MarginInputs extends FloorInputs {
  readonly kind: "two-post";
  readonly frame: ColumnFrame;
  readonly soft: SoftBound | undefined;
  readonly duty: LiftDuty;
  /** shock factor of hard use */
  readonly shock: number;
  readonly product: AnchorProduct;
}

/** A lift on posts, frames or feet. */
export interface SupportInputs extends FloorInputs {
  readonly kind: "supports";
  readonly duty: SupportDuty;
  /** undefined for a lift that only rests on the floor */
  readonly product: AnchorProduct | undefined;
}

export type JudgedInputs = MarginInputs | SupportInputs;

/** The concrete under a base. */
export const concreteAt = ({ concrete, sides }: JudgedInputs, side: string): JudgedInputs["concrete"][number] =>
  concrete[Math.max(0, sides.indexOf(side))]!;

/** The inputs of a two-post lift. */
export const marginInputs = (job: Job, facts: Facts, end: End): MarginInputs | Unable => {
  if (job.lift.kind !== "two-post") return unable("margin", `A ${job.lift.kind} lift has no pair of columns.`);
  const inputs = judgedInputs(job, facts, end);
  return isUnable(inputs) || inputs.kind === "two-post" ? inputs : unable("margin", "not a two-post lift");
};

/** The inputs of any lift whose loads can be computed. */
export const judgedInputs = (job: Job, facts: Facts, end: End): JudgedInputs | Unable => {
  const { lift, units } = job;
  const lacking: string[] = [];
  const assumed: string[] = [];
  const load = (fact: Quantity, words: string, fallback?: Default): number => {
    if (fact.known) return loadEnd(fact, end);
    if (fallback) return taken(words, fallback, assumed);
    lacking.push(words);
    return Number.NaN;
  };
  const kind = lift.kind === "two-post" ? "two-post" : "supports";
  if (kind === "two-post" && !lift.top.known)
    assumed.push("top of the lift: free-standing, the worse, until somebody looks");
  const rated = load(lift.rated, "rated load of the lift");
  const spacing = kind === "two-post" ? load(lift.spacing, "spacing of the columns") : Number.NaN;
  const pads = padSets(job, rated, end);
  if ((kind === "two-post" || lift.kind === "one-post") && pads.length === 0 && !stated(job))
    lacking.push("reach of the arms (pad line to column)");
  const columnWeight = lift.columnWeight.known
    ? loadEnd(lift.columnWeight, end)
    : taken("weight of a column, as a share of the rated load", defaults.columnWeightShare, assumed) * rated;
  const tied = kind === "two-post" && tieCounts(job);
  const tieHeight = tied ? load(lift.tieHeight, "height of the overhead beam") : Number.NaN;
  if (kind === "two-post" ? !lift.base.outline : facts.bases.some((b) => b.outline.length < 3))
    lacking.push(kind === "two-post" ? "base plate" : "what each support stands on the floor with");
  if (kind === "two-post" && lift.anchors.holes.length === 0) lacking.push("hole pattern of the base plate");
  if (facts.bases.length === 0) lacking.push("position of the columns");
  const product = kind === "two-post" || lift.anchors.holes.length > 0 ? productOf(job, end, lacking) : undefined;
  facts.thickness.forEach((under) => {
    if (thicknessFor(under, end) === undefined) lacking.push(`thickness at the ${baseWords(under.side)}`);
  });
  if (lacking.length > 0) return unable("margin", `Not known: ${[...new Set(lacking)].join(", ")}.`);
  const dynamicFactor = job.choices.dynamicFactor.known ? job.choices.dynamicFactor.value : 1;
  const fullRise = load(lift.fullHeight, "carriage height at full rise", defaults.fullHeight);
  const workForce = load(job.choices.workForce, "work force on the vehicle", defaults.workForce);
  const shock = load(job.choices.dynamicFactor, "shock factor in hard use", defaults.dynamicFactor);
  const common: FloorInputs = {
    end,
    sides: facts.bases.map(({ side }) => side),
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
  if (kind === "supports") {
    const duty = { weight: rated, columnWeight, pads, fullRise, workForce, dynamicFactor, shock };
    return { ...common, kind, product, duty };
  }
  return {
    ...common,
    kind,
    frame: {
      top: tied ? "overhead-tied" : "free-standing",
      spacing,
      columnWeight,
      reach: pads[0]!.reach,
      baseStiffness: "rigid",
      ...(tied ? { tieHeight } : {}),
    },
    soft: softBound(job),
    duty: {
      weight: rated,
      dynamicFactor,
      pads,
      pickUpHeight: load(lift.pickupHeight, "carriage height at pick-up", defaults.pickupHeight),
      fullRise: Math.min(fullRise, tied ? tieHeight : Number.POSITIVE_INFINITY),
      unevenShare: job.choices.uneven.known ? job.choices.uneven.value : defaults.unevenShare.value,
      workForce,
    },
    shock,
    product: product!,
  };
};

/** The maker states the load of every support. */
const stated = ({ lift }: Job): boolean => lift.supports.length > 0 && lift.supports.every((s) => s.P.known);

const concreteUnder = (side: string, h: number, hWhy: string, f: number, fWhy: string, units: Job["units"]) => ({
  h,
  f,
  thickness: term("h", `thickness that counts at the ${baseWords(side)}`, h, "length", units, { basis: hWhy }),
  fc: term("f'c", `compressive strength that counts at the ${baseWords(side)}`, f, "stress", units, { basis: fWhy }),
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
  assumed.push(`${words}: ${`${given.value} ${given.unit}`.trim()}, ${given.why} (${given.source})`);
  return standIn(given).value;
};
