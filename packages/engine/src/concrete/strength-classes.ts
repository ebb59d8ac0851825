/** Strength classes of EN 206 and their properties in EN 1992-1-1. Strengths in MPa, moduli in MPa. */
export interface StrengthClass {
  /** as printed, e.g. "C25/30" */
  readonly name: string;
  /** characteristic strength of a 150 × 300 mm cylinder */
  readonly fck: number;
  /** characteristic strength of a 150 mm cube */
  readonly fckCube: number;
}

/** @clause EN 206:2013, Table 12 (normal-weight concrete) */
export const strengthClasses: readonly StrengthClass[] = (
  [
    [8, 10],
    [12, 15],
    [16, 20],
    [20, 25],
    [25, 30],
    [30, 37],
    [35, 45],
    [40, 50],
    [45, 55],
    [50, 60],
    [55, 67],
    [60, 75],
    [70, 85],
    [80, 95],
    [90, 105],
  ] as const
).map(([fck, fckCube]) => ({ name: `C${fck}/${fckCube}`, fck, fckCube }));

/** The class named so ("C25/30", "c25/30", "C25"), or undefined. */
export const strengthClassNamed = (name: string): StrengthClass | undefined => {
  const wanted = name.trim().toUpperCase();
  return strengthClasses.find((c) => c.name === wanted || c.name.startsWith(`${wanted}/`));
};

/** The highest class whose cylinder strength is not above `fck`, or undefined below C8/10. */
export const strengthClassReached = (fck: number): StrengthClass | undefined =>
  strengthClasses.findLast((c) => c.fck <= fck);

/** Cylinder strength of a cube strength, by straight lines between the classes (ratio 0.8 below the first). */
export const cylinderFromCube = (fckCube: number): number => {
  const above = strengthClasses.findIndex((c) => c.fckCube >= fckCube);
  if (above === 0) return 0.8 * fckCube;
  const high = strengthClasses[above === -1 ? strengthClasses.length - 1 : above]!;
  const low = strengthClasses[above === -1 ? strengthClasses.length - 2 : above - 1]!;
  return low.fck + ((high.fck - low.fck) * (fckCube - low.fckCube)) / (high.fckCube - low.fckCube);
};

/** `fcm` = fck + 8. @clause EN 1992-1-1:2004, Table 3.1 */
export const meanStrength = (fck: number): number => fck + 8;

/** `fctm`: mean axial tensile strength. @clause EN 1992-1-1:2004, Table 3.1 */
export const meanTensileStrength = (fck: number): number =>
  fck <= 50 ? 0.3 * fck ** (2 / 3) : 2.12 * Math.log(1 + meanStrength(fck) / 10);

/** `fctm,fl`: mean flexural tensile strength of a member `h` mm deep. @clause EN 1992-1-1:2004, 3.1.8, Eq. 3.23 */
export const meanFlexuralStrength = (fck: number, h: number): number =>
  Math.max(1.6 - h / 1000, 1) * meanTensileStrength(fck);

/** `Ecm`: secant modulus, MPa, quartzite aggregate. @clause EN 1992-1-1:2004, Table 3.1 */
export const secantModulus = (fck: number): number => 22_000 * (meanStrength(fck) / 10) ** 0.3;
