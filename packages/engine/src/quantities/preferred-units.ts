import type { Dimension, Unit } from "./units.ts";

export type UnitSystem = "inch-pound" | "si";

/** Unit and usual decimals a dimension is printed in. */
const preferred: Readonly<Record<Dimension, Readonly<Record<UnitSystem, readonly [Unit, number]>>>> = {
  length: { "inch-pound": ["in", 2], si: ["mm", 0] },
  area: { "inch-pound": ["in²", 2], si: ["mm²", 0] },
  volume: { "inch-pound": ["yd³", 2], si: ["m³", 2] },
  force: { "inch-pound": ["lb", 0], si: ["kN", 2] },
  moment: { "inch-pound": ["kip-in", 1], si: ["kN·m", 2] },
  stress: { "inch-pound": ["psi", 0], si: ["MPa", 2] },
  "subgrade-modulus": { "inch-pound": ["pci", 0], si: ["MN/m³", 1] },
  "unit-weight": { "inch-pound": ["pcf", 0], si: ["kN/m³", 1] },
  "line-load": { "inch-pound": ["lb/ft", 0], si: ["N/mm", 2] },
  angle: { "inch-pound": ["deg", 1], si: ["deg", 1] },
  temperature: { "inch-pound": ["°F", 0], si: ["°C", 0] },
  time: { "inch-pound": ["d", 1], si: ["d", 1] },
  speed: { "inch-pound": ["mph", 1], si: ["m/s", 1] },
  evaporation: { "inch-pound": ["lb/ft²/h", 2], si: ["kg/m²/h", 2] },
  dosage: { "inch-pound": ["lb/yd³", 1], si: ["kg/m³", 1] },
  number: { "inch-pound": ["", 2], si: ["", 2] },
  "fourth-power-length": { "inch-pound": ["in⁴", 1], si: ["cm⁴", 0] },
  "rotational-stiffness": { "inch-pound": ["kip-in/rad", 0], si: ["kN·m/rad", 0] },
  "translational-stiffness": { "inch-pound": ["kip/in", 1], si: ["kN/mm", 2] },
};

export const preferredUnit = (dimension: Dimension, system: UnitSystem): Unit => preferred[dimension][system][0];

export const usualDecimals = (dimension: Dimension, system: UnitSystem): number => preferred[dimension][system][1];
