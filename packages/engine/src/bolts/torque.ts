/**
 * Torque and preload: T = K D F. T in N·mm, D in mm, F in N. What torque says: how hard the nut was to turn. Preload
 * follows from it only to about ±30 %, and holding strength not at all.
 */

/** How nut and thread rub. */
export type ThreadSurface =
  | "dry"
  | "zinc-light-oil"
  | "black-oxide-oiled"
  | "stainless-lubricated"
  | "wax-or-ptfe"
  | "gritty-or-rusty";

/** Nut factor `K`, from - to. Fastener data pages and Speck, Mechanical Fastening, 2015 [speck]; "or more" for rust. */
export const nutFactors: Readonly<Record<ThreadSurface, { readonly low: number; readonly high: number }>> = {
  dry: { low: 0.2, high: 0.25 },
  "zinc-light-oil": { low: 0.18, high: 0.22 },
  "black-oxide-oiled": { low: 0.15, high: 0.18 },
  "stainless-lubricated": { low: 0.14, high: 0.18 },
  "wax-or-ptfe": { low: 0.1, high: 0.14 },
  "gritty-or-rusty": { low: 0.3, high: 0.4 },
};

/** Torque for a preload, N·mm. Speck, p. 85 [speck]. */
export const torqueFor = (preload: number, diameter: number, K: number): number => K * diameter * preload;

/** Preload from a torque, N. Speck, p. 85 [speck]. */
export const preloadFrom = (torque: number, diameter: number, K: number): number => torque / (K * diameter);

/** The span of preload that a torque may have made, N: lowest with the highest K. */
export const preloadSpan = (
  torque: number,
  diameter: number,
  surface: ThreadSurface,
): { readonly low: number; readonly high: number } => ({
  low: preloadFrom(torque, diameter, nutFactors[surface].high),
  high: preloadFrom(torque, diameter, nutFactors[surface].low),
});

/** Torque at the nut with a straight extension on the wrench: M2 = M1 L2/L1, L2 = L1 + extension. Fastener data sheet. */
export const torqueWithExtension = (setting: number, wrench: number, extension: number): number =>
  (setting * (wrench + extension)) / wrench;

/** What to set on the wrench so that `wanted` reaches the nut. */
export const settingWithExtension = (wanted: number, wrench: number, extension: number): number =>
  (wanted * wrench) / (wrench + extension);

/** Category of a post-installed anchor by its worst reliability test, percent of reference. @clause ACI 355.2-04 */
export const anchorCategory = (percent: number): 1 | 2 | 3 | "unqualified" =>
  percent >= 80 ? 1 : percent >= 70 ? 2 : percent >= 60 ? 3 : "unqualified";
