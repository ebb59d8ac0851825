import { type Term, type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { basisWords } from "../facts/known.ts";

/** Thickness of the slab the joints are cut in, mm: as ordered, or the maker's least where nothing is ordered yet. */
export const slabForJoints = ({ floor, lift }: Job): Term | Unable => {
  const { thickness } = floor;
  if (thickness.known)
    return {
      symbol: "h",
      words: "thickness of the slab",
      value: thickness.value,
      unit: "mm",
      basis: basisWords(thickness.basis),
    };
  const { thickness: asked } = lift.asks;
  if (asked.known)
    return {
      symbol: "h",
      words: "thickness of the slab, taken as the least the maker asks",
      value: asked.value,
      unit: "mm",
      basis: "nobody has said how thick the slab will be",
    };
  return unable(
    "joint plan",
    "The thickness of the slab is not stated (floor.thickness), and the joints follow from it.",
  );
};
