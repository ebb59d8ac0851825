/**
 * What Westergaard's special theory makes of a thin-plate stress under a concentrated patch away from edges, as a factor:
 *
 *   [ln(2l/b) + ½ - γ] / [ln(2l/a) + ½ - γ],   b = √(1.6 a² + h²) - 0.675 h for a < 1.724 h, else b = a.
 *
 * A thin plate cannot know b. The factor is offered beside the result, never put into it: up to 1.04 where a is about h (the
 * thick slab is worse), below 1 where a is under about half of h. Interior loads only. Westergaard 1926 [westergaard-1926].
 *
 * @param a - radius of the circle with the area of the patch, mm
 * @param h - thickness there, mm
 * @param l - radius of relative stiffness, mm; meant for a and b well below l
 */
export const thickPlateFactor = (a: number, h: number, l: number): number => {
  const b = a < 1.724 * h ? Math.sqrt(1.6 * a * a + h * h) - 0.675 * h : a;
  const eulerGamma = 0.5772156649015329;
  const peak = (radius: number): number => Math.log((2 * l) / radius) + 0.5 - eulerGamma;
  return peak(b) / peak(a);
};
