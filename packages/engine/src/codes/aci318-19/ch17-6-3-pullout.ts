/** 17.6.3, pull-out in tension, and 17.6.4, side-face blowout of headed anchors: lb, in, psi. */

/**
 * `Npn`: pull-out strength.
 *
 * @clause ACI 318-19, 17.6.3.1
 * @param psiCP - ψc,P of 17.6.3.3
 * @param Np - from the product's tests (5 % fractile) or from `pulloutOfHead`, lb
 * @returns Npn, lb
 */
export const pullout = (psiCP: number, Np: number): number => psiCP * Np;

/**
 * `Np`: pull-out strength of a cast-in headed stud or bolt, in cracked concrete.
 *
 * @clause ACI 318-19, 17.6.3.2.2 (a)
 * @param Abrg - net bearing area of the head, in²
 * @param fc - psi
 * @returns Np, lb
 */
export const pulloutOfHead = (Abrg: number, fc: number): number => 8 * Abrg * fc;

/**
 * `ψc,P`: concrete shown not to crack at service loads. A post-installed anchor has its Np for each state from tests.
 *
 * @clause ACI 318-19, 17.6.3.3
 * @param state - cracked or uncracked
 * @param installation - cast-in 1.4 uncracked; post-installed 1.0
 * @returns ψc,P
 */
export const psiCrackingPullout = (
  state: "cracked" | "uncracked",
  installation: "cast-in" | "post-installed",
): number => (state === "uncracked" && installation === "cast-in" ? 1.4 : 1);

/**
 * `Nsb`: side-face blowout strength of one headed anchor.
 *
 * @clause ACI 318-19, 17.6.4.1
 * @param ca1 - edge distance, in
 * @param Abrg - net bearing area of the head, in²
 * @param fc - psi
 * @param ca2 - edge distance at right angles, in
 * @param lambdaA - lightweight factor
 * @returns Nsb, lb
 * Valid where hef > 2.5 ca1. Where ca2 < 3 ca1 the factor (1 + ca2/ca1)/4 applies, with 1 ≤ ca2/ca1 ≤ 3.
 */
export const sideFaceBlowout = (ca1: number, Abrg: number, fc: number, ca2: number, lambdaA = 1): number => {
  const corner = ca2 < 3 * ca1 ? (1 + Math.max(1, ca2 / ca1)) / 4 : 1;
  return corner * 160 * ca1 * Math.sqrt(Abrg) * lambdaA * Math.sqrt(fc);
};

/**
 * `Nsbg`: side-face blowout strength of headed anchors in a row along the edge.
 *
 * @clause ACI 318-19, 17.6.4.2
 * @param Nsb - of one anchor, without the corner factor, lb
 * @param s - distance between the outer anchors along the edge, in
 * @param ca1 - edge distance, in
 * @returns Nsbg, lb
 * Valid where hef > 2.5 ca1 and the spacing is below 6 ca1.
 */
export const sideFaceBlowoutOfRow = (Nsb: number, s: number, ca1: number): number => (1 + s / (6 * ca1)) * Nsb;
