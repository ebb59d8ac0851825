import { assumed, defaults, type Job, type Zone } from "@floorworthy/job";
import { basisWords, type End } from "./known.ts";

const PSI = 0.006894757293168361;

/** Compressive strength of the concrete under the bases, MPa: what is shown for the page, what the margin may use. */
export interface StrengthFinding {
  /** undefined where nothing shows it */
  readonly shown: number | undefined;
  /** what the margin counts with at each end */
  readonly worst: number;
  readonly best: number;
  readonly why: string;
  readonly tensileNote: string | undefined;
}

export const strengthUnder = (job: Job, zone: Zone | undefined): StrengthFinding => {
  const { strength, surface, state } = job.floor;
  const tensileNote = strength.tensileAsPrinted.known
    ? `"${strength.tensileAsPrinted.written} tensile" cannot be: concrete's tensile strength is about a tenth of its compressive strength. It is read as a compressive figure wrongly named and not used until confirmed.`
    : undefined;
  const found = (shown: number | undefined, worst: number, best: number, why: string): StrengthFinding => ({
    shown,
    worst,
    best,
    why,
    tensileNote,
  });
  if (zone?.strength.known) {
    const { low, high, basis } = zone.strength;
    return found(
      basis.kind === "stated" && zone.state === "standing" ? undefined : low,
      low,
      high,
      `${zone.name}: ${basisWords(basis)}`,
    );
  }
  if (state === "to-be-poured") {
    const ordered = job.pour?.strength.known ? job.pour.strength : strength.specified;
    if (ordered.known) return found(ordered.low, ordered.low, ordered.high, "as ordered; to be shown by cylinders");
  }
  const cylinders = values(strength.cylinders.filter((c) => c.ageDays >= 28).map((c) => c.strength));
  if (cylinders.length > 0) return fromCylinders(job, cylinders, found);
  const cores = values(strength.cores.map((c) => c.strength));
  if (cores.length > 0) return fromCores(cores, found);
  if (
    strength.specified.known &&
    strength.specified.basis.kind !== "stated" &&
    strength.tickets.known &&
    strength.tickets.value === "in-hand"
  ) {
    const { low, high } = strength.specified;
    return found(low, low, high, "ordered strength with the delivery tickets in hand");
  }
  const dusts = surface.known && surface.value !== "sound";
  const given = dusts ? defaults.strengthOfDustingSurface : defaults.strength;
  const { value: worst, high } = assumed(given);
  const best = strength.specified.known ? Math.max(strength.specified.high, worst) : high;
  return found(undefined, worst, best, `nothing shows it: ${given.value} ${given.unit} counts, because ${given.why}`);
};

const values = (facts: readonly { known: boolean; value?: number }[]): number[] =>
  facts.flatMap((fact) => (fact.known && fact.value !== undefined ? [fact.value] : []));

type Found = (shown: number | undefined, worst: number, best: number, why: string) => StrengthFinding;

/** ACI 318-19 26.12.3.1: no test more than 500 psi under f'c and the mean at least f'c. */
const fromCylinders = (job: Job, results: number[], found: Found): StrengthFinding => {
  const mean = results.reduce((a, b) => a + b, 0) / results.length;
  const lowest = Math.min(...results);
  const { specified } = job.floor.strength;
  const claimed = specified.known ? specified.value : lowest;
  const accepted = mean >= claimed && lowest >= claimed - 500 * PSI;
  const counts = accepted ? Math.min(claimed, lowest) : lowest;
  return found(counts, counts, mean, `${results.length} cylinder${results.length === 1 ? "" : "s"} of 28 days or more`);
};

/** A first look at an old floor: 0.85 of the mean, and never above the lowest (ACI 214.4R judges it properly). */
const fromCores = (results: number[], found: Found): StrengthFinding => {
  const mean = results.reduce((a, b) => a + b, 0) / results.length;
  const lowest = Math.min(...results);
  const equivalent = Math.min(0.85 * mean, lowest);
  return found(
    equivalent,
    equivalent,
    mean,
    `${results.length} core${results.length === 1 ? "" : "s"}: the lower of 0.85 of the mean and the lowest`,
  );
};

export const strengthFor = (finding: StrengthFinding, end: End): number =>
  end === "worst" ? finding.worst : finding.best;
