import type { Lift } from "@floorworthy/job";

/** Arms with pads meet about the line of the columns; four supports take a vehicle by its axles. */
export const liftedBy = ({ kind }: Pick<Lift, "kind">): "pads" | "axles" =>
  kind === "four-post" || kind === "scissor" || kind === "mobile-columns" ? "axles" : "pads";
