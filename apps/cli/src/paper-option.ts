import type { Paper } from "@floorworthy/papers";

/** The paper asked for, or undefined after the mistake has been printed. */
export const paperOf = (wanted: string): Paper | undefined => {
  if (wanted === "letter" || wanted === "a4") return wanted;
  console.error(`--paper ${wanted}: write letter or a4.`);
  return undefined;
};
