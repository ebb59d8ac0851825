import type { Dimension } from "./units.ts";

/** How a dimension is spoken of to a person, and how one is written. */
export interface DimensionWords {
  /** with its article: "a length" */
  readonly name: string;
  /** for "Write a number and a unit, such as …" */
  readonly example: string;
}

export const dimensionWords: Readonly<Record<Dimension, DimensionWords>> = {
  length: { name: "a length", example: "6 in or 150 mm" },
  area: { name: "an area", example: "0.334 in² or 215 mm²" },
  volume: { name: "a volume", example: "2.5 yd³ or 1.9 m³" },
  force: { name: "a weight or force", example: "9000 lb or 40 kN" },
  moment: { name: "a torque or moment", example: "120 lb-ft or 160 N·m" },
  stress: { name: "a strength or pressure", example: "3000 psi or 20 MPa" },
  "subgrade-modulus": { name: "a ground stiffness", example: "100 pci or 27 MN/m³" },
  "unit-weight": { name: "a weight per volume", example: "150 pcf or 24 kN/m³" },
  "line-load": { name: "a load per length", example: "400 lb/ft or 6 N/mm" },
  angle: { name: "an angle", example: "30 deg" },
  temperature: { name: "a temperature", example: "70 °F or 21 °C" },
  time: { name: "a time", example: "28 d" },
  speed: { name: "a speed", example: "10 mph or 4 m/s" },
  evaporation: { name: "an evaporation rate", example: "0.2 lb/ft²/h or 1 kg/m²/h" },
  dosage: { name: "a dosage", example: "4 lb/yd³ or 2.4 kg/m³" },
  number: { name: "a plain number", example: "0.5, 50 % or, for a slope, 1/8 in per ft" },
  "fourth-power-length": { name: "a second moment of area", example: "40 in⁴ or 1660 cm⁴" },
  "rotational-stiffness": { name: "a rotational stiffness", example: "9000 kip-in/rad or 1000 kN·m/rad" },
  "translational-stiffness": { name: "a stiffness", example: "100 kip/in or 17 kN/mm" },
};
