import type { UnitSystem } from "@floorworthy/engine/quantities";

const IN = 25.4;

/** Common practice, no source; the lift's manual comes first. mm. */
export const practice = {
  /** stock shims, thickest first */
  stock: { "inch-pound": [IN / 4, IN / 8, IN / 16], si: [5, 2, 1] } satisfies Record<UnitSystem, readonly number[]>,
  /** highest stack that may stand without grout */
  stackLimit: 0.5 * IN,
  /** highest bed of grout before the floor itself is put right */
  groutLimit: 1.5 * IN,
  /** difference of height between the two bases */
  between: 0.25 * IN,
  /** mixed beyond the net volume of grout */
  groutWaste: 0.1,
} as const;

/** Step to which a stack is rounded, mm. */
export const stepOf = (units: UnitSystem): number => practice.stock[units].at(-1)!;
