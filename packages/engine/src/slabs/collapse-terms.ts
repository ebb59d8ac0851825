/** Collapse load of one patch against its force, unfolded. */
import type { Check } from "../quantities/index.ts";
import { shown } from "../quantities/index.ts";
import { collapseLoad, type LoadPlace } from "./collapse-load.ts";
import type { SlabMoments } from "./section-moments.ts";

const FORMULA: Record<LoadPlace, string> = {
  interior: "2π(Mp+Mn) at a = 0; 4π(Mp+Mn)/(1 − a/3l) from a = 0.2 l; linear between",
  edge: "π(Mp+Mn)/2 + 2Mn at a = 0; [π(Mp+Mn) + 4Mn]/(1 − 2a/3l) from a = 0.2 l; linear between",
  corner: "2Mn at a = 0; 4Mn/(1 − a/l) from a = 0.2 l; linear between",
};

/** @param P - force on the patch, N @param a - its radius, mm @param l - radius of relative stiffness, mm */
export const collapseCheck = (place: LoadPlace, P: number, a: number, l: number, moments: SlabMoments): Check => {
  const capacity = collapseLoad(place, moments, a, l);
  return {
    id: `slab-collapse-${place}`,
    title: `Collapse of the slab under one patch, ${place}`,
    demand: { symbol: "P", words: "force on the patch", value: P, unit: "N" },
    capacity: {
      symbol: "Pc",
      words: "collapse load (an estimate by yield lines, after cracking)",
      value: capacity,
      unit: "N",
      clause: "Meyerhof 1962 in the form of TR34, 4th ed.",
      formula: FORMULA[place],
      worked: `Mp = ${shown(moments.Mp)}, Mn = ${shown(moments.Mn)}, a/l = ${shown(a / l)}`,
      from: [
        { symbol: "Mp", words: "sagging moment after cracking, per unit width", value: moments.Mp, unit: "N" },
        { symbol: "Mn", words: "hogging moment, per unit width", value: moments.Mn, unit: "N" },
        { symbol: "a", words: "radius of the patch", value: a, unit: "mm" },
        { symbol: "l", words: "radius of relative stiffness", value: l, unit: "mm" },
      ],
    },
    ratio: P === 0 ? 0 : capacity > 0 ? P / capacity : Number.POSITIVE_INFINITY,
    clause: "Meyerhof 1962 in the form of TR34, 4th ed.",
  };
};
