import { assumed, defaults, type Job, type Zone } from "@floorworthy/job";
import { placedBases } from "../layout.ts";
import { basisWords, type End } from "./known.ts";
import { shown, term } from "./print.ts";
import { reboundNotes } from "./rebound.ts";
import { coresUnder, fromCores } from "./strength-cores.ts";
import { fromCylinders, usableCylinders } from "./strength-cylinders.ts";
import type { Evidence, StrengthFinding } from "./strength-finding.ts";
import { zoneUnder } from "./thickness.ts";

export type { StrengthFinding } from "./strength-finding.ts";

/** The best evidence there is, in this order: the zone's own, the order, cylinders, cores, papers; else the default. */
export const strengthUnder = (job: Job, zone: Zone | undefined): StrengthFinding => {
  const cores = coresUnder(job, zone);
  const few = cores.length > 0 ? fromCores(job, cores, nothingShown(job)) : undefined;
  const evidence =
    zoneStrength(job, zone) ??
    (hasOwnConcrete(zone) ? undefined : (ordered(job) ?? cylindersOf(job))) ??
    (few?.shown === undefined ? undefined : few) ??
    (hasOwnConcrete(zone) ? undefined : papers(job)) ??
    few ??
    nothingShown(job);
  const contradicted = few && evidence !== few ? weaker(few, evidence) : underPapers(evidence, papers(job));
  return {
    ...contradicted,
    notes: [...(contradicted.notes ?? []), ...reboundNotes(job)],
    tensileNote: tensileNote(job),
  };
};

/** @returns what the strength under each base rests on; one where both are the same concrete */
export const strengthStudy = (job: Job): readonly (StrengthFinding & { readonly under: string })[] => {
  const found = placedBases(job).map((base) => {
    const zone = zoneUnder(job, base);
    return { zone, under: `${base.side} base`, ...strengthUnder(job, zone) };
  });
  const [left, right] = found;
  const same =
    left && right && (left.zone === right.zone || (!hasOwnConcrete(left.zone) && !hasOwnConcrete(right.zone)));
  return (same ? [{ ...left, under: "every base" }] : found).map(({ zone: _, ...finding }) => finding);
};

/** A pad or strip that was not cast with the slab: the slab's papers and cylinders say nothing of it. */
const hasOwnConcrete = (zone: Zone | undefined): boolean =>
  zone !== undefined &&
  zone.state === "standing" &&
  (zone.kind === "pad" || zone.kind === "strip") &&
  !(zone.tied.known && zone.tied.value === "cast-with");

/** Cores of this very concrete that fall short weigh more than papers. */
const weaker = (cores: Evidence, other: Evidence): Evidence => {
  const cap = cores.shown ?? cores.atMost ?? Number.POSITIVE_INFINITY;
  return cap < (other.shown ?? other.worst)
    ? underPapers(cores, other)
    : { ...other, beside: [...other.beside, cores.workings, ...cores.beside] };
};

const underPapers = (cores: Evidence, other: Evidence | undefined): Evidence =>
  other?.shown !== undefined && cores.from === "cores" && (cores.shown ?? cores.atMost ?? 0) < other.shown
    ? {
        ...cores,
        notes: [
          ...(cores.notes ?? []),
          `the cores fall short of what else is known (${other.why}): they count, and somebody has to find out why`,
        ],
      }
    : cores;

const tensileNote = ({ floor }: Job): string | undefined => {
  const { tensileAsPrinted: printed } = floor.strength;
  return printed.known
    ? `"${printed.written} tensile" cannot be: concrete's tensile strength is about a tenth of its compressive strength. It is read as a compressive figure wrongly named and not used until confirmed.`
    : undefined;
};

const zoneStrength = (job: Job, zone: Zone | undefined): Evidence | undefined => {
  if (!zone?.strength.known) return undefined;
  const { low, high, basis } = zone.strength;
  const why = `${zone.name}: ${basisWords(basis)}`;
  return {
    shown: basis.kind === "stated" && zone.state === "standing" ? undefined : low,
    worst: low,
    best: high,
    why,
    from: "zone",
    atMost: undefined,
    workings: term("f'c", `compressive strength of ${zone.name}`, low, "stress", job.units, { basis: why }),
    beside: [],
  };
};

const ordered = (job: Job): Evidence | undefined => {
  if (job.floor.state !== "to-be-poured") return undefined;
  const order = job.pour?.strength.known ? job.pour.strength : job.floor.strength.specified;
  if (!order.known) return undefined;
  const why = "as ordered; to be shown by cylinders";
  const workings = term("f'c", "compressive strength ordered", order.low, "stress", job.units, {
    basis: basisWords(order.basis),
  });
  return {
    shown: order.low,
    worst: order.low,
    best: order.high,
    why,
    from: "ordered",
    atMost: undefined,
    workings,
    beside: [],
  };
};

const cylindersOf = (job: Job): Evidence | undefined => {
  const tests = usableCylinders(job);
  return tests.length > 0 ? fromCylinders(job, tests) : undefined;
};

const papers = (job: Job): Evidence | undefined => {
  const { specified, tickets } = job.floor.strength;
  if (!specified.known || specified.basis.kind === "stated" || !tickets.known || tickets.value !== "in-hand")
    return undefined;
  const why = "ordered strength with the delivery tickets in hand";
  const workings = term("f'c", "compressive strength ordered and delivered", specified.low, "stress", job.units, {
    basis: `${basisWords(specified.basis)}; ${why}`,
  });
  return {
    shown: specified.low,
    worst: specified.low,
    best: specified.high,
    why,
    from: "papers",
    atMost: undefined,
    workings,
    beside: [],
  };
};

const nothingShown = (job: Job): Evidence => {
  const { strength, surface } = job.floor;
  const given = surface.known && surface.value !== "sound" ? defaults.strengthOfDustingSurface : defaults.strength;
  const { value: worst, high } = assumed(given);
  const best = strength.specified.known ? Math.max(strength.specified.high, worst) : high;
  return {
    shown: undefined,
    worst,
    best,
    why: `nothing shows it: ${shown(worst, "stress", job.units)} counts, because ${given.why}`,
    from: "nothing",
    atMost: undefined,
    workings: term("f'c", "compressive strength counted where nothing shows it", worst, "stress", job.units, {
      basis: `assumed: ${given.why}`,
      clause: given.source,
    }),
    beside: [],
  };
};

export const strengthFor = (finding: StrengthFinding, end: End): number =>
  end === "worst" ? finding.worst : finding.best;
