/**
 * One dowel across a joint.
 *
 * Sources
 * - G. R. Cowper, The Shear Coefficient in Timoshenko's Beam Theory, J. Appl. Mech. 33 (1966) (from memory): round bar
 *   6(1+ν)/(7+6ν), 0.886 at ν = 0.3; Timoshenko's own 9/10.
 * - Modulus of dowel support 300,000 to 1,500,000 pci: Friberg 1940 as quoted in lecture notes on rigid pavements.
 */
import { toBase } from "@floorworthy/engine/quantities";
import { dowelAtFace, dowelStiffness, dowelSupport } from "@floorworthy/engine/slabs";
import { expect, test } from "vitest";

test("a stubby bar in hard sockets gives by its own shear: the shape factor lies between Cowper's and Timoshenko's", () => {
  const [d, z, E] = [60, 40, 200_000];
  const bar = { diameter: d, opening: z, support: 1e15, E };
  const bending = z ** 3 / ((12 * E * Math.PI * d ** 4) / 64);
  const sockets = 2 * dowelAtFace({ ...bar, opening: z }, 1);
  const shear = 1 / dowelStiffness(bar) - bending - sockets;
  // what is left is z/(kGA) and the turn of the bar in its sockets, which a hard socket keeps small
  const k = z / (shear * (E / 2.6) * ((Math.PI / 4) * d * d));
  const cowper = (6 * 1.3) / (7 + 6 * 0.3);
  expect(k).toBeLessThanOrEqual(0.901);
  expect(k).toBeGreaterThan(cowper - 1e-3);
});

test("support by the concrete, as printed in pci", () => {
  expect(dowelSupport.low / toBase(300_000, "pci")).toBeCloseTo(1, 12);
  expect(dowelSupport.high).toBeCloseTo(1.5e6 * (4.4482216152605 / 25.4 ** 3), 6);
});
