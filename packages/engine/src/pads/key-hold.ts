/**
 * What an undercut key finds above it: the old slab lying on the ledge. A slab lifted along its edge by q per length rises
 * off the ground over a = q/w, and is bent most at the edge of that part: m = q²/2w. So the most it gives before it cracks
 *
 *   q = √(2 w m),   w = γh,   m = fr h²/6 over the margin
 *
 * Statics of a strip lifted at its end; our own derivation. Beyond the corners nothing is counted.
 */
import { shown, type Term } from "../quantities/index.ts";

/** Hold per length of edge, N/mm. @param slab - mm, modulus of rupture MPa, N/mm³ @param margin - against first crack */
export const keyHold = (
  slab: { readonly h: number; readonly fr: number; readonly unitWeight: number },
  margin: number,
): Term => {
  const w = slab.unitWeight * slab.h;
  const m = (slab.fr * slab.h ** 2) / 6 / margin;
  return {
    symbol: "q",
    words: "what the old slab's edge holds down before it cracks, per length of key",
    value: Math.sqrt(2 * w * m),
    unit: "N/mm",
    clause: "statics of a strip lifted at its end",
    formula: "√(2 w m)",
    worked: `√(2 × ${shown(w)} × ${shown(m)})`,
    from: [
      { symbol: "w", words: "weight of the old slab per area", value: w, unit: "MPa" },
      { symbol: "m", words: "moment of the old slab at first crack, over the margin", value: m, unit: "N" },
    ],
  };
};
