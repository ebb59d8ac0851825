import type { Point } from "@floorworthy/engine/geometry";
import type { Term } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Stop } from "../assessment.ts";
import { basisWords } from "../facts/known.ts";
import { term } from "../facts/print.ts";
import { type Hit, metWords } from "./hit.ts";
import { holeDepthOf, placeOf } from "./hole-facts.ts";
import { stopRules } from "./stop-rules.ts";
import { cutBar, type HitWay, shiftLift } from "./ways.ts";

/** What to do after a drill was stopped. */
export interface HitAdvice {
  readonly format: 1;
  readonly title: string;
  readonly verdict: Stop["outcome"] | "accept-if";
  readonly sentence: string;
  /** most important first; never empty */
  readonly reasons: readonly string[];
  readonly stops: readonly Stop[];
  readonly hole: { readonly id: string; readonly at: Point | undefined; readonly met: string };
  readonly terms: readonly Term[];
  readonly ways: readonly HitWay[];
  /** never, whatever somebody says */
  readonly never: readonly string[];
  readonly record: readonly string[];
}

const never: readonly string[] = [
  "A short anchor in the short hole: it holds by its depth.",
  "One anchor left out: the others are not made for its share.",
  "A hole that wanders round the steel, a slanted or an ovalled hole.",
  "A second hole beside the first through the same plate, in the broken concrete.",
];

/** Stop rules first; only then the ways on, each with the anchor group's ratio at its place. Refused ways are not computed. */
export const adviseHit = (job: Job, hit: Hit): HitAdvice => {
  const stops = stopRules(job, hit);
  const asked = holeDepthOf(job);
  const common = {
    format: 1 as const,
    title: job.title,
    stops,
    hole: { id: hit.hole, at: placeOf(job, hit.hole), met: metWords[hit.met] },
    terms: [
      term("z", `${hit.hole} stopped at`, hit.depth, "length", job.units, { basis: "measured" }),
      ...(asked ? [term("h1", asked.by, asked.depth, "length", job.units, { basis: "anchor's sheet" })] : []),
    ],
    never,
    record: recordOf(hit),
  };
  const [first] = stops;
  if (first)
    return {
      ...common,
      verdict: first.outcome,
      sentence: `Stop at ${hit.hole}. ${first.reason}`,
      reasons: stops.map((s) => s.reason),
      ways: [],
    };
  const ways = [cutBar(job, hit), shiftLift(job, hit, "filled"), shiftLift(job, hit, "open")];
  const open = ways.filter((way) => way.state !== "closed");
  const cleared = clearedWords(job);
  return open.length > 0
    ? {
        ...common,
        verdict: "accept-if",
        sentence: `${hit.hole} may go on in ${open.length === 1 ? "one way" : `one of ${open.length} ways`}, and in no other.`,
        reasons: [cleared, ...open.map((way) => `${way.title}: ${way.why}`)],
        ways,
      }
    : {
        ...common,
        verdict: "refer",
        sentence: `No way on is open at ${hit.hole}: leave the hole, and have a licensed engineer look.`,
        reasons: [cleared, ...ways.map((way) => `${way.title}: ${way.why}`)],
        ways,
      };
};

/** What was ruled out, and how it is known: the first thing said. */
const clearedWords = ({ floor }: Job): string =>
  `Not post-tensioned (${floor.postTension.known ? basisWords(floor.postTension.basis) : "not known"}), no tube or conduit unaccounted for, slab on the ground, not over a footing. Look once more before going on.`;

const recordOf = ({ hole }: Hit): string[] => [
  `Photograph of ${hole} with a tape, before anything else is done.`,
  `In the anchor log at ${hole}: depth reached, what was met and how it was shown, the way taken, who agreed.`,
  "The bar's place and direction drawn on the plan, old holes with their filling.",
];
