import type { Lift } from "@floorworthy/job";

/** Arms with pads meet about the line of the columns; four supports take a vehicle by its axles. */
export const liftedBy = ({ kind }: Pick<Lift, "kind">): "pads" | "axles" =>
  kind === "four-post" || kind === "scissor" || kind === "mobile-columns" ? "axles" : "pads";

/** How many axles a full lift would carry, two columns or posts to each: two, or half the columns on wheels that there are. */
export const axlesOf = ({ kind, supports }: Pick<Lift, "kind" | "supports">): number => {
  const columns = new Set(supports.map(({ column }) => column).filter((column) => column !== undefined)).size;
  return kind === "mobile-columns" && columns > 0 ? columns / 2 : 2;
};
