import { characteristicInPlaceEn13791, type InPlaceStrength } from "@floorworthy/engine/concrete";
import { isUnable, type Term } from "@floorworthy/engine/quantities";
import { describeSample } from "@floorworthy/engine/statistics";
import type { Job } from "@floorworthy/job";
import { term } from "./print.ts";

/**
 * Characteristic strength in place from at least eight cores, for information: cores as 2:1 cylinders by the length factor,
 * without the corrections for drilling and moisture that EN 13791 does not know.
 * @clause EN 13791:2019, clause 8 (from memory)
 */
export const en13791Beside = ({ units }: Job, place: InPlaceStrength): Term[] => {
  const strengths = place.cores.map(
    ({ core, factors }) => core.strength * (factors.find((f) => f.name === "length")?.value ?? 1),
  );
  const found = characteristicInPlaceEn13791(describeSample(strengths));
  if (isUnable(found)) return [];
  const { mean, lowest } = describeSample(strengths);
  return [
    term("f_ck,is", "beside it: characteristic strength in place", found.strength, "stress", units, {
      formula: found.governs === "spread" ? "mean − k_n s" : "lowest + M",
      clause: "EN 13791:2019, clause 8, from memory",
      from: [
        term("f_m", "mean of the cores as 2:1 cylinders", mean, "stress", units),
        term("f_low", "lowest core", lowest, "stress", units),
        term("k_n", "factor for an unknown variance", found.kn, "plain", units, { clause: "EN 1990 Table D.1" }),
        term("s", "spread, at least 8 % of the mean", found.spread, "stress", units),
      ],
    }),
  ];
};
