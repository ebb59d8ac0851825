import type { Job } from "@floorworthy/job";
import { firstCrackMargin } from "../margin/practice.ts";
import type { PadFigures } from "./figures.ts";

/** Capacity over demand asked of a design. */
export interface PadLimits {
  readonly crack: number;
  readonly collapse: number;
  readonly anchors: number;
  readonly ground: number;
}

/** The person's wishes, else: 1.4 on first crack, 1.5 on collapse (common practice, no source), 1 on anchors and ground. */
export const padLimits = (job: Job): PadLimits => ({
  crack: firstCrackMargin(job),
  collapse: job.pad.collapseMargin.known ? job.pad.collapseMargin.value : 1.5,
  anchors: job.pad.anchorMargin.known ? job.pad.anchorMargin.value : 1,
  ground: job.pad.groundMargin.known ? job.pad.groundMargin.value : 1,
});

/** Anchors that hold no better in the widest concrete are the anchors' matter: then the pad must only take nothing away. */
export const anchorsAsked = (asked: number, free: number): number => Math.min(asked, 0.98 * free);

const TO_THE_DIGIT = 1 - 1e-9;

/** What a design falls short of, in words; nothing where it meets everything. */
export const shortfalls = (figures: PadFigures, limits: PadLimits, free: number): string[] => {
  const short = (margin: number, asked: number, what: string): string[] =>
    margin >= asked * TO_THE_DIGIT ? [] : [`${what} ${digits(margin)}, asked ${digits(asked)}`];
  return [
    ...short(
      figures.crack,
      limits.crack,
      `first-crack margin of the ${figures.crackIn === "slab" ? "thin slab beside the pad" : "pad"}`,
    ),
    ...short(figures.collapse, limits.collapse, "collapse margin"),
    ...short(figures.ground, limits.ground, "margin on the ground"),
    ...short(figures.anchors, anchorsAsked(limits.anchors, free), "anchor margin"),
    ...(figures.others <= 1 / TO_THE_DIGIT
      ? []
      : [`${figures.othersGovern.toLowerCase()} at ${Math.round(100 * figures.others)} %`]),
  ];
};

export const digits = (margin: number): string => (Number.isFinite(margin) ? margin.toFixed(2) : "without limit");
