import { shown } from "../facts/print.ts";

/** "3 in toward the door and 1/2 in to the left"; "nowhere" for less than a millimetre. */
export const moveWords = (dx: number, dy: number, units: "inch-pound" | "si"): string => {
  const length = (mm: number): string => shown(Math.abs(mm), "length", units);
  const ways = [
    ...(Math.abs(dy) >= 0.5 ? [`${length(dy)} toward the ${dy > 0 ? "door" : "back wall"}`] : []),
    ...(Math.abs(dx) >= 0.5 ? [`${length(dx)} to the ${dx > 0 ? "right" : "left"}`] : []),
  ];
  return ways.length > 0 ? ways.join(" and ") : "no move";
};
