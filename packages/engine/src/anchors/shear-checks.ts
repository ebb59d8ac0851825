import { criticalSpacing, pryout, pryoutCoefficient } from "../codes/aci318-19/index.ts";
import { distanceToLine } from "../geometry/index.ts";
import { type Check, type Term, toBase } from "../quantities/index.ts";
import { actingGroups } from "./acting-groups.ts";
import { allowed, check, worst } from "./allowance.ts";
import type { Anchor, Barrier } from "./anchor-group.ts";
import { shearBreakout } from "./breakout-shear.ts";
import { breakout } from "./breakout-tension.ts";
import type { DesignBasis } from "./design-basis.ts";
import { type EdgeRow, edgeRow } from "./edge-row.ts";
import { steelStrength } from "./steel.ts";
import { names } from "./tension-checks.ts";
import { computed, figure, given } from "./terms.ts";

/** A component of the shear smaller than this share of it is rounding. */
const NOISE = 1e-9;

const shearOf = ({ shearX, shearY }: Anchor): number => Math.hypot(shearX, shearY);

/** The checks of 17.7, each at its worst anchor, row or edge. None where nothing pushes sideways. */
export const shearChecks = (anchors: readonly Anchor[], basis: DesignBasis): readonly Check[] => {
  const sheared = anchors.filter((anchor) => shearOf(anchor) > 0);
  if (sheared.length === 0) return [];
  const most = sheared.reduce((a, b) => (shearOf(b) > shearOf(a) ? b : a));
  const steel = steelStrength("shear", basis);
  const edges = basis.barriers.flatMap((barrier) => rowsInReach(sheared, barrier, basis));
  const total = sheared.reduce((sum, anchor) => sum + shearOf(anchor), 0);
  const checks = [
    steel &&
      check(
        "anchor-steel-shear",
        "Steel of the anchor in shear",
        given("Vua,i", "shear on the most loaded anchor", shearOf(most), "lb"),
        allowed(steel, "steel", "shear", basis),
        names([most]),
      ),
    worst(edges.filter((row) => row.toward > NOISE * total).map((row) => edgeCheck(row, "toward", basis))),
    worst(edges.filter((row) => row.along > NOISE * total).map((row) => edgeCheck(row, "along", basis))),
    worst(
      [...actingGroups(sheared, basis.barriers, toBase(criticalSpacing(basis.hef.value), "in")), [most]].map((group) =>
        pryoutCheck(group, basis),
      ),
    ),
  ];
  return checks.filter((c) => c !== undefined);
};

/**
 * The rows, on either side of a barrier, that may break out to it. Farther than 10 hef and 60 da an edge is not checked
 * (EN 1992-4, 7.2.2.5), nor one that does not lie before the body.
 */
const rowsInReach = (anchors: readonly Anchor[], barrier: Barrier, basis: DesignBasis): readonly EdgeRow[] => {
  if (barrier.a.x === barrier.b.x && barrier.a.y === barrier.b.y) return [];
  const left = anchors.filter((anchor) => distanceToLine(anchor, barrier) > 0);
  const right = anchors.filter((anchor) => distanceToLine(anchor, barrier) <= 0);
  const limit = Math.max(10 * basis.hef.value, 60 * basis.da.value);
  return [left, right]
    .filter((side) => side.length > 0)
    .map((side) => edgeRow(side, barrier, basis.barriers))
    .filter((row) => row.ca1 <= limit && before(row));
};

const before = ({ barrier: { a, b }, anchors, ca1 }: EdgeRow): boolean => {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const along = (p: { readonly x: number; readonly y: number }): number =>
    ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / length;
  const half = 1.5 * toBase(ca1, "in");
  return along(anchors.at(-1)!) + half >= 0 && along(anchors[0]!) - half <= length;
};

const edgeCheck = (row: EdgeRow, direction: "toward" | "along", basis: DesignBasis): Check => {
  const demand = given("Vua", `shear of the base ${direction} the ${row.barrier.kind}`, row[direction], "lb");
  const capacity = allowed(shearBreakout(row, direction, basis), "breakout", "shear", basis);
  const id = direction === "toward" ? "anchor-shear-breakout" : "anchor-shear-breakout-along";
  const governs = `${names(row.anchors)}, ${row.barrier.kind} at ${figure(row.ca1)} in`;
  return check(id, `Shear breakout ${direction} an edge`, demand, capacity, governs);
};

const pryoutCheck = (group: readonly Anchor[], basis: DesignBasis): Check => {
  const { strength } = breakout(group, group.map(shearOf), basis);
  const { hef } = basis;
  const sum = (axis: "shearX" | "shearY"): number => group.reduce((total, anchor) => total + anchor[axis], 0);
  const demand: Term = given("Vua", "shear on the group", Math.hypot(sum("shearX"), sum("shearY")), "lb");
  const Vcp = computed("Vcpg", "pry-out strength", pryout(hef.value, strength.value), "lb", {
    clause: "ACI 318-19 17.7.3.1",
    formula: "kcp Ncpg",
    worked: `${figure(pryoutCoefficient(hef.value))} × ${figure(strength.value)}`,
    from: [hef, strength],
  });
  return check("anchor-pryout", "Pry-out by shear", demand, allowed(Vcp, "pullout", "shear", basis), names(group));
};
