import type { PlacedBase } from "@floorworthy/assess";
import { distance } from "@floorworthy/engine/geometry";

/** Nuts of one base crosswise: each next one is the farthest from the one before. Common practice, no source. */
export const crosswise = ({ anchors }: PlacedBase): readonly string[] => {
  const left = [...anchors];
  const order: typeof left = left.splice(0, 1);
  while (left.length > 0) {
    const from = order[order.length - 1]!.at;
    const farthest = left.reduce((best, anchor) =>
      distance(anchor.at, from) > distance(best.at, from) + 1e-6 ? anchor : best,
    );
    order.push(...left.splice(left.indexOf(farthest), 1));
  }
  return order.map(({ id }) => id);
};
