import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { basisWords } from "../facts/known.ts";
import { term } from "../facts/print.ts";
import type { HoleCheck, StackValues } from "./hole-check.ts";
import { practice } from "./practice.ts";

/** Does the hole fit the slab and the anchor reach through what lies on it. Only what is known is checked. */
export const stackChecks = (job: Job, values: StackValues): HoleCheck[] => [
  ...memberThickness(job, values),
  ...coverBelow(job, values),
  ...holeDepth(job, values),
  ...anchorLength(job, values),
];

const length = (job: Job, symbol: string, words: string, value: number, rest: Partial<Term> = {}): Term =>
  term(symbol, words, value, "length", job.units, rest);

const check = (
  id: string,
  title: string,
  clause: string,
  weight: HoleCheck["weight"],
  demand: Term,
  capacity: Term,
): HoleCheck => ({
  id,
  title,
  clause,
  weight,
  demand,
  capacity,
  ratio: capacity.value > 0 ? demand.value / capacity.value : Number.POSITIVE_INFINITY,
});

const memberThickness = (job: Job, { h }: StackValues): HoleCheck[] => {
  const least = job.lift.anchors.product.minimumThickness;
  if (!least.known || h === undefined) return [];
  return [
    check(
      "member-thickness",
      "Concrete at least as thick as the anchor's sheet asks",
      "anchor's sheet",
      "limit",
      length(job, "hmin", "least thickness on the anchor's sheet", least.high, { basis: basisWords(least.basis) }),
      length(job, "h", "concrete that counts", h),
    ),
  ];
};

/** Where the sheet's own least thickness is kept the sheet has been tested for it, and the rule of thumb only advises. */
const coverBelow = (job: Job, { h, d0, cover }: StackValues): HoleCheck[] => {
  if (cover === undefined || d0 === undefined || h === undefined) return [];
  const least = job.lift.anchors.product.minimumThickness;
  const bySheet = least.known && h >= least.high - 1e-6 && cover > 0;
  return [
    check(
      "cover-below",
      "Concrete left below the hole",
      "2 hole diameters, at least 30 mm: common practice; from memory of European assessments",
      bySheet ? "advice" : "limit",
      length(job, "c_min", "least left below", Math.max(2 * d0, practice.coverLeast), {
        formula: "max(2 d0, 30 mm)",
      }),
      length(job, "c", "left below", Math.max(0, cover), { formula: "h − h1" }),
    ),
  ];
};

const holeDepth = (job: Job, { h1, hnom }: StackValues): HoleCheck[] =>
  h1 === undefined || hnom === undefined
    ? []
    : [
        check(
          "hole-depth",
          "Hole at least as deep as the anchor goes",
          "anchor's sheet",
          "limit",
          length(job, "hnom", "nominal embedment", hnom),
          length(job, "h1", "depth of the hole", h1),
        ),
      ];

const anchorLength = (job: Job, { hnom, above, length: L, planned }: StackValues): HoleCheck[] =>
  hnom === undefined || above === undefined || L === undefined
    ? []
    : [
        check(
          "anchor-length",
          planned === undefined ? "Anchor long enough, without a shim" : "Anchor long enough for the planned shims",
          "common practice, no source",
          "limit",
          length(job, "L_need", "embedment, shims, plate, washer, nut, two threads", hnom + (planned ?? 0) + above, {
            formula: "hnom + s + t + w + m_n + 2p",
          }),
          length(job, "L", "length of the anchor", L),
        ),
      ];
