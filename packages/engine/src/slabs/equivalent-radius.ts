/** Circles that stand for other loaded areas. Lengths mm, forces N, pressures MPa. */

/**
 * `b`: the radius that lets a thin-plate formula give the stress of a real slab of depth h under a small circle
 * (Westergaard's special theory). For the interior stress and the 1926 edge stress only; deflections use `a`.
 *
 * `b = √(1.6 a² + h²) − 0.675 h` when a < 1.724 h, else `b = a`. Huang 2nd ed., Eq. 4.19 [huang-2004].
 */
export const specialRadius = (a: number, h: number): number =>
  a < 1.724 * h ? Math.sqrt(1.6 * a * a + h * h) - 0.675 * h : a;

/** Radius of the circle with the area of a rectangle, mm. Exact by area; fair where the long side is at most twice the short. */
export const rectangleRadius = (width: number, length: number): number => Math.sqrt((width * length) / Math.PI);

/** `c = 1.772 a`: side of the square with the area of a circle, as printed for √π (Ioannides, Thompson & Barenberg 1985), mm. */
export const squareSide = (a: number): number => 1.772 * a;

/**
 * Radius of the one circle that stands for two equal loads side by side, mm.
 *
 * `a = √(0.8521 Pd / qπ + (Sd/π) √(Pd / 0.5227 q))`, Huang 2nd ed., Eq. 3.10 and Example 4.5 [huang-2004].
 * @param Pd - force of one of the two, N
 * @param q - contact pressure, MPa
 * @param Sd - distance of their centres, mm
 */
export const dualRadius = (Pd: number, q: number, Sd: number): number =>
  Math.sqrt((0.8521 * Pd) / (q * Math.PI) + (Sd / Math.PI) * Math.sqrt(Pd / (0.5227 * q)));
