import { thicknessTolerance } from "@floorworthy/engine/concrete";
import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { basisWords } from "./known.ts";
import { term } from "./print.ts";
import type { CountedReading } from "./readings.ts";

const CLAUSE = "ACI 117-10 4.5.4";

/** How far a standing slab lies under the thickness named for it. A builder may be within tolerance and the slab too thin. */
export const toleranceTerms = ({ floor, units }: Job, readings: readonly CountedReading[]): Term[] => {
  const { thickness, state } = floor;
  const full = readings.filter(({ reading }) => reading.end === "through").map(({ low, high }) => (low + high) / 2);
  if (!thickness.known || state !== "standing" || full.length === 0) return [];
  const found = thicknessTolerance(full, thickness.value);
  const ordered = term("t_o", "thickness named for the slab", thickness.value, "length", units, {
    basis: basisWords(thickness.basis),
  });
  const under = (words: string, value: number, limit: string, result: "met" | "not-met"): Term =>
    term(
      "Δt",
      `${words} under its name: the builder's tolerance of ${limit} is ${result === "met" ? "kept" : "not kept"}`,
      value,
      "length",
      units,
      {
        clause: CLAUSE,
        from: [ordered],
      },
    );
  return [
    under("mean of the readings", found.meanUnder, "3/8 in", found.mean),
    under("thinnest reading", found.worstUnder, "3/4 in", found.single),
  ];
};
