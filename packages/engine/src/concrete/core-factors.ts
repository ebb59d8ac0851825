import { type Unable, unable } from "../quantities/index.ts";

/** How a core was kept before the test: as it came, soaked 48 h in water, or dried in air. */
export type CoreMoisture = "as-received" | "soaked" | "air-dried";

/** A tested core. Lengths in mm (capped length), strength as tested in MPa. */
export interface Core {
  readonly strength: number;
  readonly length: number;
  readonly diameter: number;
  readonly moisture: CoreMoisture;
}

/** A factor that turns a core's strength into that of the concrete in place, and how uncertain the factor itself is. */
export interface CoreFactor {
  readonly name: "length" | "diameter" | "moisture" | "damage";
  readonly value: number;
  /** coefficient of variation, a fraction */
  readonly variation: number;
}

const c42: readonly (readonly [number, number])[] = [
  [1, 0.87],
  [1.25, 0.93],
  [1.5, 0.96],
  [1.75, 0.98],
  [2, 1],
];

/**
 * Strength correction for a core shorter than two diameters, by straight lines; 1 from 2 to 2.1.
 * @clause ASTM C42/C42M, 7.9.1 table
 */
export const coreLengthFactorC42 = (slenderness: number): number | Unable => {
  if (!(slenderness >= 1)) return unable("ASTM C42", "a core shorter than its diameter is not tested");
  if (slenderness > 2.1) return unable("ASTM C42", "a core longer than 2.1 diameters is trimmed first");
  return interpolate(c42, slenderness);
};

const alpha = 3e-6 / 0.006894757293168361; // 3e-6 per psi

/**
 * The four factors of a core, from memory: length 1 - (b - αf)(2 - l/d)²; diameter 1.06, 1.00, 0.98 at 2, 4, 6 in;
 * moisture 1.00, 1.09 soaked, 0.96 air-dried; drilling damage 1.06.
 * @clause ACI 214.4R-10, Table 8.1 (factors) and Table 9.1 (their variations)
 */
export const coreFactorsAci2144 = (core: Core): readonly CoreFactor[] | Unable => {
  const slenderness = core.length / core.diameter;
  if (!(slenderness >= 1)) return unable("ACI 214.4R", "the core is shorter than its diameter; the factors begin at 1");
  const short = Math.max(0, 2 - slenderness) ** 2;
  const inches = Math.min(6, Math.max(2, core.diameter / 25.4));
  const b = { "as-received": 0.13, soaked: 0.117, "air-dried": 0.144 }[core.moisture];
  return [
    { name: "length", value: 1 - (b - alpha * core.strength) * short, variation: 0.025 * short },
    {
      name: "diameter",
      value: interpolate(
        [
          [2, 1.06],
          [4, 1],
          [6, 0.98],
        ],
        inches,
      ),
      variation: interpolate(
        [
          [2, 0.118],
          [4, 0],
          [6, 0.018],
        ],
        inches,
      ),
    },
    {
      name: "moisture",
      value: { "as-received": 1, soaked: 1.09, "air-dried": 0.96 }[core.moisture],
      variation: 0.025,
    },
    { name: "damage", value: 1.06, variation: 0.025 },
  ];
};

/**
 * Factor for reinforcing bars square to the axis of a core: 1 + 1.5 Σ (φr/φc)(h/l), h from the bar to the nearer end.
 * Better to drill another core. @clause CSTR 11 / BS 1881-120, as quoted by Newman & Choo, vol. 2
 */
export const barInCoreFactor = (
  core: { readonly length: number; readonly diameter: number },
  bars: readonly { readonly diameter: number; readonly toNearerEnd: number }[],
): number =>
  1 + 1.5 * bars.reduce((sum, bar) => sum + (bar.diameter * bar.toNearerEnd) / (core.diameter * core.length), 0);

/**
 * In-place cube strength over core strength: 2.5/(1.5 + 1/λ) drilled level, 2.3/(1.5 + 1/λ) drilled down, λ = l/d.
 * @clause BS 1881-120:1983, as quoted by Newman & Choo, vol. 2, p. 5/9
 */
export const coreToCubeFactor = (slenderness: number, drilled: "level" | "down"): number =>
  (drilled === "level" ? 2.5 : 2.3) / (1.5 + 1 / slenderness);

/** Strength of a standard cube of the same delivery over that in place: 1.3 (3.25/2.5 and 3.0/2.3). @clause CSTR 11 */
export const potentialOverInPlace = (drilled: "level" | "down"): number =>
  drilled === "level" ? 3.25 / 2.5 : 3.0 / 2.3;

const interpolate = (table: readonly (readonly [number, number])[], x: number): number => {
  const i = table.findIndex(([at]) => at >= x);
  if (i <= 0) return i === 0 ? table[0]![1] : table[table.length - 1]![1];
  const [[x0, y0], [x1, y1]] = [table[i - 1]!, table[i]!];
  return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
};
