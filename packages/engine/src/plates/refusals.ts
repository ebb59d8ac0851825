import { type Polygon, signedArea } from "../geometry/index.ts";
import { type Unable, unable } from "../quantities/workings.ts";
import type { Floor, FloorCase, FloorOptions, Transfer } from "./floor.ts";
import type { Grid } from "./grid.ts";

/** The first reason why this floor cannot be calculated, in words; undefined when it can. */
export const refusal = (floor: Floor, cases: readonly FloorCase[], options: FloorOptions): Unable | undefined => {
  const { outline: o } = floor;
  const thicknesses = [floor.thickness, ...floor.zones.map((zone) => zone.thickness)];
  const reason = [
    check(o.x1 - o.x0 > 0 && o.y1 - o.y0 > 0 && finite(o.x0, o.x1, o.y0, o.y1), "the slab has no area"),
    check(!floor.within || isConvex(floor.within), "the piece of slab to be solved is not a convex outline"),
    check(thicknesses.every(positive), "a thickness is not a positive number"),
    check(positive(floor.E), "the modulus of the concrete is not a positive number"),
    check(floor.nu >= 0 && floor.nu < 0.5, "Poisson's ratio is not between 0 and 0.5"),
    check(floor.k >= 0 && finite(floor.k), "the modulus of subgrade reaction is not a number"),
    check(floor.k > 0 || isHeld(floor), "there is no ground under the slab and no edge holds it"),
    check(floor.unitWeight >= 0 && finite(floor.unitWeight), "the unit weight is not a number"),
    check(
      floor.zones.every(({ rect: r }) => finite(r.x0, r.x1, r.y0, r.y1)),
      "a zone has no place",
    ),
    check(
      floor.joints.every((j) => finite(j.at) && springsMakeSense(j.transfer)),
      "a joint has no place or no stiffness",
    ),
    check(positive(options.fineness ?? 1), "the fineness is not a positive number"),
    check(
      cases.every(({ loads }) => loads.every(loadIsFinite)),
      "a load is not a number",
    ),
  ].find((r) => r !== undefined);
  return reason === undefined ? undefined : unable("plates", reason);
};

/** Beyond this the floor is too large for the detail asked of it. */
const mostUnknowns = 40_000;

export const tooLarge = ({ unknowns }: Grid): Unable | undefined =>
  unknowns > mostUnknowns
    ? unable("plates", `the floor is too large for this detail: ${unknowns} unknowns, at most ${mostUnknowns}`)
    : undefined;

const check = (holds: boolean, reason: string): string | undefined => (holds ? undefined : reason);
const finite = (...values: number[]): boolean => values.every(Number.isFinite);
const positive = (value: number): boolean => value > 0 && Number.isFinite(value);
const isConvex = (polygon: Polygon): boolean => {
  const turn = Math.sign(signedArea(polygon));
  return (
    turn !== 0 &&
    polygon.every((a, i) => {
      const [b, c] = [polygon[(i + 1) % polygon.length]!, polygon[(i + 2) % polygon.length]!];
      return turn * ((b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x)) >= -1e-6 && finite(a.x, a.y);
    })
  );
};
const isHeld = ({ edges = {} }: Floor): boolean => Object.values(edges).some((edge) => edge !== "free");
const springsMakeSense = (t: Transfer): boolean => t.kind !== "springs" || (t.shear >= 0 && t.rotation >= 0);
const loadIsFinite = (load: FloorCase["loads"][number]): boolean =>
  load.kind === "point"
    ? finite(load.x, load.y, load.P)
    : finite(load.p0, load.px, load.py) && load.polygon.every((p) => finite(p.x, p.y));
