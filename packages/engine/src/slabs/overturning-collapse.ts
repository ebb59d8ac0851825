/**
 * Collapse of a slab under a base that presses at its toe and pulls at its anchors.
 *
 * Equilibrium of the base gives a press C (down) and a pull T (up) a short way apart. Each alone has a collapse load:
 * Pc for the press; Pt for the pull, whose radial cracks open at the top, so that Mp and Mn change places.
 *
 *   lower bound   C/Pc + T/Pt ≤ 1    the moment fields of C and T, each scaled to its share, add up to a field that
 *                                    breaks nowhere (the strength of a section is convex), so this never flatters
 *   upper bound   max(C/Pc, T/Pt) ≤ 1    each mechanism alone must stand; collapse cannot come later than this
 *
 * The slab's own weight, which resists the pull, and the ground that the pull relieves are left out, both on the safe
 * side for the lower bound. Our own derivation from the static and kinematic theorems; the collapse loads are Meyerhof's.
 */
import type { Check, Term } from "../quantities/index.ts";
import { shown } from "../quantities/index.ts";
import { collapseLoad, type LoadPlace } from "./collapse-load.ts";
import type { SlabMoments } from "./section-moments.ts";

/** One force of the base on the slab, spread over a circle. */
export interface PatchForce {
  /** N, without sign */
  readonly force: number;
  /** mm */
  readonly radius: number;
  readonly place: LoadPlace;
}

/** Press and pull of a base whose resultant P stands M/P away from its centre. */
export interface ToeCouple {
  readonly press: number;
  readonly pull: number;
}

/**
 * `T = (M − P dc)/z`, `C = P + T`; no pull while the resultant stands inside the toe.
 * @param dc - centre of the base to the pressed toe, mm @param z - anchor row to toe, mm
 */
export const toeCouple = (P: number, M: number, dc: number, z: number): ToeCouple => {
  const pull = Math.max(0, (Math.abs(M) - P * dc) / z);
  return { press: P + pull, pull };
};

export type CollapseBound = "lower" | "upper";

/** Utilisation of the slab's collapse strength under press and pull together. */
export const overturningCollapse = (
  press: PatchForce,
  pull: PatchForce,
  moments: SlabMoments,
  l: number,
  bound: CollapseBound = "lower",
): Check => {
  const Pc = collapseLoad(press.place, moments, press.radius, l);
  const Pt = collapseLoad(pull.place, { Mp: moments.Mn, Mn: moments.Mp }, pull.radius, l);
  const shares = [share(press.force, Pc), share(pull.force, Pt)] as const;
  const ratio = bound === "lower" ? shares[0] + shares[1] : Math.max(...shares);
  const from = [
    force("C", "press under the toe", press.force),
    force("Pc", `collapse load of the press, ${press.place}`, Pc),
    force("T", "pull at the anchors", pull.force),
    force("Pt", `collapse load of the pull, ${pull.place}`, Pt),
  ];
  const joined = bound === "lower" ? "C/Pc + T/Pt" : "max(C/Pc, T/Pt)";
  return {
    id: `slab-collapse-${bound}`,
    title: `Collapse of the slab under press and pull, ${bound} bound`,
    demand: {
      symbol: joined,
      words: "use of the collapse strength",
      value: ratio,
      unit: "",
      formula: joined,
      worked: `${shown(press.force)}/${shown(Pc)}, ${shown(pull.force)}/${shown(Pt)}`,
      from,
    },
    capacity: { symbol: "1", words: "all of it", value: 1, unit: "" },
    ratio,
    clause: "Meyerhof 1962 in the form of TR34, 4th ed., with our bound for the couple",
    governs: shares[0] >= shares[1] ? "press under the toe" : "pull at the anchors",
  };
};

const share = (force: number, capacity: number): number =>
  force === 0 ? 0 : capacity > 0 ? force / capacity : Number.POSITIVE_INFINITY;
const force = (symbol: string, words: string, value: number): Term => ({ symbol, words, value, unit: "N" });
