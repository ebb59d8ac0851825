import type { Units } from "../../work/messages.ts";
import { useWork } from "../../work/use-work.ts";

/** What can be laid over the plan. */
export const layerNames = {
  bodies: "breakout bodies",
  places: "where it may stand",
  stress: "stress",
  pressure: "ground pressure",
} as const;

export type LayerName = keyof typeof layerNames;

/** How many places get a figure. */
const PLACES = 24;

/** The layers asked for, worked out beside the page. */
export const useLayers = (text: string, units: Units, on: ReadonlySet<LayerName>, margins: "asked" | "not-asked") => {
  const given = [text, units] as [string, Units];
  const bodies = useWork("bodies", on.has("bodies") ? given : undefined);
  const placing = useWork("placing", on.has("places") ? given : undefined);
  const map = useWork("placeMap", on.has("places") && margins === "asked" ? [...given, PLACES] : undefined);
  const what = on.has("stress") ? "stress" : on.has("pressure") ? "pressure" : undefined;
  const lines = useWork("slabLines", what && [...given, what]);
  return { bodies, placing, map, lines };
};
