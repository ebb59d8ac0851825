/**
 * Thickness of a base plate bent as a cantilever beyond the column, φ = 0.90 (LRFD) or Ω = 1.67 (ASD) on the plastic
 * moment Fy t²/4. Source: AISC Steel Design Guide 1, 2nd ed. (2006), sections 3.1 to 3.4 [aisc-dg1]; the printed
 * coefficients 1.49, 2.11, 1.83 and 2.58 are these rounded. Any consistent units.
 */

/** Safety format of the guide. */
export type SteelFormat = "LRFD" | "ASD";

const plasticShare: Record<SteelFormat, number> = { LRFD: 0.9, ASD: 1 / 1.67 };

/** t for a moment `m` per unit width of plate: √(4m / (φ Fy)). */
const thicknessFor = (m: number, Fy: number, format: SteelFormat): number =>
  Math.sqrt((4 * m) / (plasticShare[format] * Fy));

/**
 * Thickness on the bearing side: pressure over the whole cantilever, or over its outer `bearingLength` where shorter.
 *
 * @param cantilever - m or n, mm @param pressure - fp, MPa @param Fy - yield strength of the plate, MPa @returns mm
 */
export const bearingThickness = (
  cantilever: number,
  pressure: number,
  bearingLength: number,
  Fy: number,
  format: SteelFormat = "LRFD",
): number => {
  const Y = Math.min(cantilever, bearingLength);
  return thicknessFor(pressure * Y * (cantilever - Y / 2), Fy, format);
};

/**
 * Thickness on the tension side: the row's pull `tension` (N) at `arm` (x, mm) from the column flange, over `width`.
 *
 * @returns mm
 */
export const tensionThickness = (
  tension: number,
  arm: number,
  width: number,
  Fy: number,
  format: SteelFormat = "LRFD",
): number => thicknessFor((tension * arm) / width, Fy, format);
