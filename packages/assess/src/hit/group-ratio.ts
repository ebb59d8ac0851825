import type { Job } from "@floorworthy/job";
import type { MarginCheck } from "../assessment.ts";
import { factsOf } from "../facts/facts.ts";
import { marginOf } from "../margin/margin.ts";

/** The anchor group's worst counted check at a place of the columns, cracked concrete; or why it is not computed. */
export const groupRatio = (job: Job): MarginCheck | { readonly notComputed: string } => {
  const margin = marginOf(job, factsOf(job), "word");
  const worst = margin.checks
    .filter((c) => c.group === "anchors" && c.weight === "limit" && c.concrete !== "uncracked")
    .toSorted((a, b) => b.ratio - a.ratio)[0];
  return worst ?? { notComputed: margin.sentence };
};
