import { type Action, phiBreakout, phiPullout, phiSteel } from "../codes/aci318-19/index.ts";
import type { Check, Term } from "../quantities/index.ts";
import type { DesignBasis } from "./design-basis.ts";
import { computed, figure } from "./terms.ts";

/** What decides the failure: it chooses the strength reduction factor. */
export type Mode = "steel" | "breakout" | "pullout";

/** Service loads against 0.65 × the 5 % fractile / 1.6. */
const ALLOWANCE_FACTOR = 0.65;
const LOAD_FACTOR = 1.6;

/** φRn, or the service allowance, from a nominal strength. */
export const allowed = (nominal: Term, mode: Mode, action: Action, basis: DesignBasis): Term => {
  const phi =
    basis.mode === "service-allowance" ? serviceFactor(mode, action, basis) : strengthFactor(mode, action, basis);
  if (basis.mode === "service-allowance")
    return computed(
      `φ${nominal.symbol}/1.6`,
      `service allowance: ${nominal.words}`,
      (phi.value * nominal.value) / LOAD_FACTOR,
      nominal.unit,
      {
        clause: "common practice, no source",
        formula: `φ ${nominal.symbol} / 1.6`,
        worked: `${figure(phi.value)} × ${figure(nominal.value)} / 1.6`,
        from: [phi, nominal],
      },
    );
  return computed(`φ${nominal.symbol}`, `design strength: ${nominal.words}`, phi.value * nominal.value, nominal.unit, {
    clause: phi.clause ?? "",
    formula: `φ ${nominal.symbol}`,
    worked: `${figure(phi.value)} × ${figure(nominal.value)}`,
    from: [phi, nominal],
  });
};

/** An unknown category counts as the lowest, an unknown steel as brittle. */
const strengthFactor = (mode: Mode, action: Action, { product, concrete }: DesignBasis): Term => {
  const { category, ductile, kind } = product;
  const words = "strength reduction factor";
  if (mode === "steel") {
    const clause = "ACI 318-19 Table 17.5.3(a)";
    const phi = computed("φ", words, phiSteel(action, ductile ?? "brittle"), "", { clause });
    return ductile === undefined ? { ...phi, basis: "assumed: brittle, because the ductility is not known" } : phi;
  }
  const installation = kind === "cast-in" ? kind : (category ?? 3);
  const value =
    mode === "breakout" ? phiBreakout(action, installation, concrete.supplementary) : phiPullout(action, installation);
  const phi = computed("φ", words, value, "", {
    clause: `ACI 318-19 Table 17.5.3(${mode === "breakout" ? "b" : "c"})`,
  });
  const counts = action === "tension" && kind !== "cast-in" && category === undefined;
  return counts ? { ...phi, basis: "assumed: category 3, because the category is not known" } : phi;
};

const serviceFactor = (mode: Mode, action: Action, basis: DesignBasis): Term => {
  const value = Math.min(ALLOWANCE_FACTOR, categoryFactor(mode, action, basis));
  return computed("φ", "factor of the service allowance", value, "", { clause: "common practice, no source" });
};

/** A category that is known to be poor counts in the service allowance too. */
const categoryFactor = (mode: Mode, action: Action, basis: DesignBasis): number => {
  const { category } = basis.product;
  if (mode === "steel" || category === undefined) return 1;
  return mode === "breakout" ? phiBreakout(action, category, "none") : phiPullout(action, category);
};

/** Demand against capacity; nothing asked of nothing is 0. */
export const check = (id: string, title: string, demand: Term, capacity: Term, governs: string): Check => ({
  id,
  title,
  demand,
  capacity,
  ratio: demand.value <= 0 ? 0 : capacity.value > 0 ? demand.value / capacity.value : Number.POSITIVE_INFINITY,
  clause: capacity.from?.find((t) => t.symbol !== "φ" && t.clause !== undefined)?.clause ?? capacity.clause ?? "",
  governs,
});

/** The check with the greatest ratio; the first of equals. */
export const worst = (checks: readonly Check[]): Check | undefined =>
  checks.reduce<Check | undefined>((w, c) => (w === undefined || c.ratio > w.ratio ? c : w), undefined);
