import { barArea, barDiameter } from "@floorworthy/engine/orders";
import type { PadSection } from "@floorworthy/engine/pads";
import { type Check, toBase } from "@floorworthy/engine/quantities";
import { fibreMoments, plainMoments, type SlabMoments, steelMoments } from "@floorworthy/engine/slabs";
import type { PadDesign } from "./design.ts";

/** grade 60 */
const FY = toBase(60_000, "psi");
/** cast against soil, and to the top: ACI 318-19 Table 20.5.1.3.1 and common practice */
const COVER = { bottom: toBase(3, "in"), top: toBase(2, "in") } as const;

/** Bars of one mat, the inner of its two layers, mm from the compressed face. */
const layers = (design: PadDesign) => {
  const { reinforcement: bars, depth } = design;
  if (bars.kind !== "bars") return undefined;
  const area = barArea(bars.size) / bars.spacing;
  const d = barDiameter(bars.size);
  const layer = (cover: number) => ({ area, fy: FY, depth: depth - cover - 1.5 * d });
  return { bottom: layer(COVER.bottom), top: layer(COVER.top) };
};

/** What a section of the pad is made of. @param face - which is in tension */
export const padSection = (design: PadDesign, face: "bottom" | "top" = "bottom"): PadSection => {
  const steel = layers(design)?.[face];
  return { thickness: design.depth, fc: design.strength, ...(steel && steel.depth > 0 ? { steel } : {}) };
};

/** Plastic moments for the estimate by yield lines. @param fr - modulus of rupture, MPa */
export const padMoments = (design: PadDesign, fr: number): SlabMoments => {
  const { reinforcement, depth, strength } = design;
  const bars = layers(design);
  if (reinforcement.kind === "fibre") return fibreMoments(fr, depth, reinforcement.residual);
  return bars && bars.bottom.depth > 0 ? steelMoments(fr, depth, strength, bars) : plainMoments(fr, depth);
};

/** Both mats together against shrinkage: 0.0018 of the section. ACI 318-19 24.4.3.2, from memory. */
export const leastSteelCheck = (design: PadDesign): Check | undefined => {
  const { reinforcement: bars, depth } = design;
  if (bars.kind !== "bars") return undefined;
  const [there, asked] = [(2 * barArea(bars.size)) / bars.spacing, 0.0018 * depth];
  return {
    id: "pad-steel",
    title: "Steel in the pad",
    demand: {
      symbol: "As asked",
      words: "least steel each way, mm² per mm of width",
      value: asked,
      unit: "mm",
      clause: "ACI 318-19 24.4.3.2",
      formula: "0.0018 h",
    },
    capacity: { symbol: "As", words: "both mats, mm² per mm of width", value: there, unit: "mm", formula: "2 Ab / s" },
    ratio: asked / there,
    clause: "ACI 318-19 24.4.3.2",
  };
};
