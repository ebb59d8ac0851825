/** Thickness from echoes. Lengths in mm. Calibrate on a core or a drilled hole: uncalibrated, errors of 10 % and more are usual. */

/**
 * Impact-echo: T = 0.96 Cp/(2 f). The plate must be at least six times as wide as thick.
 * @clause ASTM C1383 (from memory)
 * @param Cp - P-wave speed measured on the spot, m/s
 * @param frequency - of the thickness echo, Hz
 */
export const impactEchoThickness = (Cp: number, frequency: number): number => (1000 * 0.96 * Cp) / (2 * frequency);

/**
 * Ground radar: d = c t/(2 √ε), c the speed of light.
 * @param time - two-way travel time, ns
 * @param permittivity - relative, of this concrete (about 5 dry to 12 wet; common practice, no source)
 */
export const radarDepth = (time: number, permittivity: number): number =>
  (299.792458 * time) / (2 * Math.sqrt(permittivity));
