import { criticalSpacing, sideFaceBlowout } from "../codes/aci318-19/index.ts";
import type { Polygon } from "../geometry/index.ts";
import { type Check, type Term, toBase, units } from "../quantities/index.ts";
import { actingGroups } from "./acting-groups.ts";
import { allowed, check, worst } from "./allowance.ts";
import type { Anchor } from "./anchor-group.ts";
import { breakout } from "./breakout-tension.ts";
import type { DesignBasis } from "./design-basis.ts";
import { nearestBarrier } from "./nearest-barrier.ts";
import { pulloutStrength } from "./pull-out.ts";
import { steelStrength } from "./steel.ts";
import { computed, given } from "./terms.ts";

/** A pull smaller than this share of the greatest is rounding. */
const NOISE = 1e-9;

/** The checks of 17.6, each at its worst anchor or group, and the breakout bodies. None where nothing pulls. */
export const tensionChecks = (
  anchors: readonly Anchor[],
  basis: DesignBasis,
): { readonly checks: readonly Check[]; readonly regions: readonly Polygon[] } => {
  const greatest = anchors.reduce((most, { tension }) => Math.max(most, tension), 0);
  const pulled = anchors.filter(({ tension }) => tension > NOISE * greatest);
  if (pulled.length === 0) return { checks: [], regions: [] };
  const most = pulled.reduce((a, b) => (b.tension > a.tension ? b : a));
  const groups = actingGroups(pulled, basis.barriers, toBase(criticalSpacing(basis.hef.value), "in"));
  const together = groups.filter((group) => group.length > 1).map((group) => breakoutCheck(group, basis));
  const alone = pulled.map((anchor) => breakoutCheck([anchor], basis));
  const checks = [
    single(
      "anchor-steel-tension",
      "Steel of the anchor in tension",
      most,
      "steel",
      steelStrength("tension", basis),
      basis,
    ),
    worst(together.map((b) => b.check)),
    worst(alone.map((b) => b.check)),
    single("anchor-pullout", "Pull-out of the anchor", most, "pullout", pulloutStrength(basis), basis),
    worst(pulled.flatMap((anchor) => sideFace(anchor, basis))),
  ];
  return { checks: checks.filter((c) => c !== undefined), regions: alone.flatMap((b) => b.regions) };
};

const breakoutCheck = (group: readonly Anchor[], basis: DesignBasis) => {
  const loads = group.map(({ tension }) => tension);
  const { strength, regions } = breakout(group, loads, basis);
  const [id, title] =
    group.length === 1
      ? ["anchor-breakout-single", "Breakout of one anchor"]
      : ["anchor-breakout-group", "Breakout of anchors together"];
  const total = loads.reduce((sum, load) => sum + load, 0);
  const capacity = allowed(strength, "breakout", "tension", basis);
  return { check: check(id, title, pull("Nua", total), capacity, names(group)), regions };
};

const single = (
  id: string,
  title: string,
  anchor: Anchor,
  mode: "steel" | "pullout",
  strength: Term | undefined,
  basis: DesignBasis,
): Check | undefined =>
  strength &&
  check(id, title, pull("Nua,i", anchor.tension), allowed(strength, mode, "tension", basis), names([anchor]));

/** 17.6.4: only cast-in heads so deep beside an edge that the side face bursts. */
const sideFace = (anchor: Anchor, basis: DesignBasis): readonly Check[] => {
  const { product, hef, fc, lambdaA } = basis;
  const near = nearestBarrier(anchor, basis.barriers);
  if (product.kind !== "cast-in" || product.Abrg === undefined || near === undefined) return [];
  const ca1 = near.distance / units.in.size;
  if (hef.value <= 2.5 * ca1) return [];
  const others = basis.barriers.filter((barrier) => barrier !== near.barrier);
  const ca2 = (nearestBarrier(anchor, others)?.distance ?? Number.POSITIVE_INFINITY) / units.in.size;
  const Abrg = given("Abrg", "net bearing area of the head", product.Abrg, "in²");
  const Nsb = computed(
    "Nsb",
    "side-face blowout strength",
    sideFaceBlowout(ca1, Abrg.value, fc.value, ca2, lambdaA),
    "lb",
    {
      clause: "ACI 318-19 17.6.4.1",
      formula: "160 ca1 √Abrg λa √f'c, × (1 + ca2/ca1)/4 at a corner",
      from: [Abrg, fc],
    },
  );
  const capacity = allowed(Nsb, "breakout", "tension", basis);
  return [
    check("anchor-side-face", "Bursting of the side face", pull("Nua,i", anchor.tension), capacity, names([anchor])),
  ];
};

const pull = (symbol: string, newtons: number): Term =>
  given(symbol, symbol === "Nua" ? "pull on the group" : "pull on the most loaded anchor", newtons, "lb");

/** "anchor A" or "anchors A, B, C". */
export const names = (anchors: readonly Anchor[]): string =>
  `${anchors.length === 1 ? "anchor" : "anchors"} ${anchors.map(({ id }) => id).join(", ")}`;
