import { distance, type Point } from "@floorworthy/engine/geometry";

/** Order of tightening: each time the nut farthest from the last one, so that the plate is drawn down evenly. Common practice, no source. */
export const crossPattern = (anchors: readonly { readonly id: string; readonly at: Point }[]): string[] => {
  const order: { readonly id: string; readonly at: Point }[] = anchors.slice(0, 1);
  while (order.length < anchors.length) {
    const last = order.at(-1)!;
    const rest = anchors.filter((a) => !order.includes(a));
    order.push(rest.reduce((best, a) => (distance(a.at, last.at) > distance(best.at, last.at) + 1e-6 ? a : best)));
  }
  return order.map(({ id }) => id);
};
