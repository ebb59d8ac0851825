/** How much concrete a pad takes, unfolded. */
import { type Term, type Unable, unable } from "../quantities/index.ts";
import type { OffsetCorner, Pad } from "./pad.ts";
import { planArea, sidesSurvive } from "./plan-area.ts";
import { type Layer, solidVolume } from "./solid-volume.ts";

/** Volumes of one pad, all its parts together. */
export interface PadVolume {
  /** everything inside its widest outline at slab level or its cut-out, from the top of the slab down */
  readonly gross: Term;
  /** what the pad adds to a slab that would be there anyway */
  readonly net: Term;
  /** plan area at full thickness */
  readonly area: Term;
}

/** Growth of the plan at the underside of the slab, mm. */
export const growthAtSlab = ({ sides, thickness, slab }: Pad): number =>
  sides.kind === "sloped" ? sides.run * Math.max(0, thickness - slab) : 0;

const cornerOf = ({ sides }: Pad): OffsetCorner => (sides.kind === "vertical" ? "mitred" : sides.corner);

/** Below the slab. */
const layersBelow = (pad: Pad): readonly Layer[] => {
  const height = Math.max(0, pad.thickness - pad.slab);
  if (pad.sides.kind === "undercut") return [{ height, below: pad.sides.reach, above: pad.sides.reach }];
  return [{ height, below: 0, above: growthAtSlab(pad) }];
};

export const padVolume = (pad: Pad): PadVolume | Unable => {
  const reach = pad.sides.kind === "undercut" ? pad.sides.reach : growthAtSlab(pad);
  if (pad.plan.shape === "outline" && !sidesSurvive(pad.plan.outline, reach)) {
    return unable("pad", "The sloped or undercut sides run into each other in a notch of the outline.");
  }
  const area = planArea(pad.plan, cornerOf(pad));
  const net = solidVolume(area, layersBelow(pad));
  const within = Math.min(pad.slab, pad.thickness) * area.at(growthAtSlab(pad));
  const areaTerm = volumeTerm("A", "plan area at full thickness", area.at(0), "mm²", []);
  const inputs = [
    areaTerm,
    volumeTerm("T", "thickness of the pad", pad.thickness, "mm", []),
    volumeTerm("h", "thickness of the slab around it", pad.slab, "mm", []),
  ];
  const netTerm = {
    ...volumeTerm("V", "concrete below the slab", net, "mm³", inputs),
    formula: "∫ A(s) dz below the slab",
  };
  return {
    area: areaTerm,
    net: netTerm,
    gross: {
      ...volumeTerm("Vg", "concrete of the pad with the slab above it", net + within, "mm³", [netTerm, ...inputs]),
      formula: "V + h A(s at the slab)",
    },
  };
};

const volumeTerm = (
  symbol: string,
  words: string,
  value: number,
  unit: "mm" | "mm²" | "mm³",
  from: readonly Term[],
): Term => ({
  symbol,
  words,
  value,
  unit,
  ...(from.length > 0 ? { from } : {}),
});
