/** What the ground gives, where nobody has tested it. k in N/mm³ unless a name says pci; pressures in MPa. */
import { toBase } from "../quantities/index.ts";

/** Soil classes as the building codes group them (Unified Soil Classification symbols in the tables below). */
export type SoilClass =
  | "crystalline bedrock"
  | "sedimentary or foliated rock"
  | "gravel"
  | "sand or silty or clayey sand and gravel"
  | "clay or silt";

/** Presumptive values of one class. Base units; `friction` is a coefficient, `cohesion` a pressure. */
export interface PresumptiveSoil {
  readonly symbols: string;
  readonly bearing: number;
  /** lateral bearing per depth, N/mm³ */
  readonly lateral: number;
  readonly sliding:
    | { readonly kind: "friction"; readonly coefficient: number }
    | { readonly kind: "cohesion"; readonly pressure: number };
}

const row = (symbols: string, bearing: number, lateral: number, friction: number): PresumptiveSoil => ({
  symbols,
  bearing: toBase(bearing, "psf"),
  lateral: toBase(lateral, "pcf"),
  sliding:
    friction < 1
      ? { kind: "friction", coefficient: friction }
      : { kind: "cohesion", pressure: toBase(friction, "psf") },
});

/**
 * Presumptive vertical bearing, lateral bearing and sliding by class: psf, psf/ft, coefficient or (clay) cohesion psf.
 * Not for mud, organic silt or clay, peat or unprepared fill: those have no presumptive value.
 *
 * @clause IBC 2012, Table 1806.2 [ibc-2012]
 */
export const presumptiveSoils: Readonly<Record<SoilClass, PresumptiveSoil>> = {
  "crystalline bedrock": row("-", 12000, 1200, 0.7),
  "sedimentary or foliated rock": row("-", 4000, 400, 0.35),
  gravel: row("GW GP", 3000, 200, 0.35),
  "sand or silty or clayey sand and gravel": row("SW SP SM SC GM GC", 2000, 150, 0.25),
  "clay or silt": row("CL ML MH CH", 1500, 100, 130),
};

/** A range of subgrade modulus, N/mm³. */
export interface SubgradeRange {
  readonly low: number;
  readonly high: number;
}

const pciRange = (low: number, high: number): SubgradeRange => ({ low: toBase(low, "pci"), high: toBase(high, "pci") });

/** k by soil symbol, broad: 50-200 for clays to 300-500 and more for gravels, pci. USACE, PCA and ACI 360R charts, from memory [aci-360r]. */
export const subgradeBySymbol: Readonly<Record<"CL CH" | "ML MH" | "SC SM" | "SP SW" | "GC GM GP GW", SubgradeRange>> =
  {
    "CL CH": pciRange(50, 200),
    "ML MH": pciRange(100, 200),
    "SC SM": pciRange(200, 300),
    "SP SW": pciRange(200, 400),
    "GC GM GP GW": pciRange(300, 500),
  };

/** k of the low, medium and high support of slab tables: 100, 200, 300 pci. */
export const subgradeBySupport: Readonly<Record<"low" | "medium" | "high", number>> = {
  low: toBase(100, "pci"),
  medium: toBase(200, "pci"),
  high: toBase(300, "pci"),
};

/**
 * k from a California bearing ratio, with the ±20 % that two published correlations differ by:
 * `k = 53.438 CBR^0.5719` pci, fit of Packard's and the PCA's chart (Barker & Alexander 2012) [barker-alexander-2012].
 */
export const subgradeFromCbr = (cbr: number): SubgradeRange & { readonly best: number } => {
  const best = toBase(53.438 * cbr ** 0.5719, "pci");
  return { low: 0.8 * best, best, high: 1.2 * best };
};
