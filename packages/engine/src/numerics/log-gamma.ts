/**
 * ln Γ(x), x > 0: the argument is raised above 12 by Γ(x+1) = xΓ(x), then Stirling's series with Bernoulli numbers.
 * Abramowitz & Stegun 6.1.15 and 6.1.41 [abramowitz-stegun]. Relative error about 1e-15.
 */
export const logGamma = (x: number): number => {
  let raised = x;
  let product = 1;
  while (raised < 12) product *= raised++;
  const r = 1 / (raised * raised);
  const series =
    (1 / 12 - r * (1 / 360 - r * (1 / 1260 - r * (1 / 1680 - r * (1 / 1188 - r * (691 / 360360)))))) / raised;
  return (raised - 0.5) * Math.log(raised) - raised + 0.5 * Math.log(2 * Math.PI) + series - Math.log(product);
};
