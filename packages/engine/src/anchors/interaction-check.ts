import { interaction } from "../codes/aci318-19/index.ts";
import type { Check } from "../quantities/index.ts";
import { check, worst } from "./allowance.ts";
import { computed, figure } from "./terms.ts";

/**
 * Pull and shear together, from the governing ratios of 17.6 and 17.7; undefined where one of them is absent. Where one
 * ratio alone says more than their sum against 1.2 it is shown: the verdict is the clause's, and the ratio never falls
 * as a load grows.
 */
export const interactionCheck = (tension: readonly Check[], shear: readonly Check[]): Check | undefined => {
  const [N, V] = [worst(tension), worst(shear)];
  if (N === undefined || V === undefined) return undefined;
  const alone = { asked: Math.max(N.ratio, V.ratio), allowed: 1 };
  const clauseSays = interaction(N.ratio, V.ratio);
  const { asked, allowed } = clauseSays.asked / clauseSays.allowed > alone.asked ? clauseSays : alone;
  const clause = allowed === 1 ? "ACI 318-19 17.8.1, 17.8.2" : "ACI 318-19 17.8.3";
  const demand = computed("ΣR", "pull and shear together", asked, "", {
    clause,
    formula: allowed === 1 ? "the greater ratio" : "Nua/φNn + Vua/φVn",
    worked: allowed === 1 ? figure(asked) : `${figure(N.ratio)} + ${figure(V.ratio)}`,
    from: [
      computed("Nua/φNn", N.title, N.ratio, "", { clause: N.clause, from: [N.demand, N.capacity] }),
      computed("Vua/φVn", V.title, V.ratio, "", { clause: V.clause, from: [V.demand, V.capacity] }),
    ],
  });
  const limit = computed("limit", "allowed", allowed, "", { clause });
  return check("anchor-interaction", "Pull and shear together", demand, limit, `${N.title}; ${V.title}`);
};
