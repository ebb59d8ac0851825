/** The little complex arithmetic the plate's exact solutions need: [real, imaginary]. */
export type Complex = readonly [number, number];

export const sum = (p: Complex, q: Complex): Complex => [p[0] + q[0], p[1] + q[1]];
export const product = (p: Complex, q: Complex): Complex => [p[0] * q[0] - p[1] * q[1], p[0] * q[1] + p[1] * q[0]];
export const scaled = (p: Complex, s: number): Complex => [p[0] * s, p[1] * s];
export const exponentialOf = (p: Complex): Complex => [
  Math.exp(p[0]) * Math.cos(p[1]),
  Math.exp(p[0]) * Math.sin(p[1]),
];
export const logarithmOf = (p: Complex): Complex => [Math.log(Math.hypot(p[0], p[1])), Math.atan2(p[1], p[0])];
