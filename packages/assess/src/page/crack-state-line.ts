import { crackFindings } from "../facts/cracks.ts";
import { shown } from "../facts/print.ts";
import type { CrackFinding } from "../facts/survey-answer.ts";
import { type Line, nothingToSay } from "./line.ts";

const [id, title] = ["crack-state", "Cracks near the lift"];

/** A crack that moves within this of a plate is the lift's matter; common practice, no source: 3 ft. */
const NEAR = 36 * 25.4;

const isNear = ({ nearest }: CrackFinding): boolean => nearest === undefined || nearest.distance < NEAR;

/**
 * A crack with a step or one that grows says that the ground moves or the slab breaks: near a base that is for an engineer,
 * elsewhere its cause has to be known first. A still crack without a step is an edge, no more.
 */
export const crackStateLine: Line = (job) => {
  const cracks = crackFindings(job);
  if (cracks.length === 0) return nothingToSay(id, title);
  const words = (list: readonly CrackFinding[]): string => list.map((crack) => wordsOf(crack, job.units)).join("; ");
  const line = { id, title, asked: "none that moves near a base" };
  const grave = cracks.filter((crack) => isNear(crack) && (crack.look === "stepped" || crack.growth === "grows"));
  if (grave.length > 0)
    return {
      ...line,
      result: "fails",
      found: words(grave),
      why: "A step or growth so near to a base says that the ground moves or the slab breaks (common practice): a licensed engineer says why before anything is poured or drilled.",
    };
  const moving = cracks.filter((crack) => crack.growth === "grows");
  if (moving.length > 0)
    return {
      ...line,
      result: "not-shown",
      found: words(moving),
      why: "Find out what makes it grow, and look again in a month: marks at both ends, the date, a photograph with a crack card.",
    };
  return {
    ...line,
    result: "meets",
    found: words(cracks),
    why: "Still, as far as anybody looked. Mark the ends and date them.",
  };
};

const wordsOf = ({ name, words, nearest }: CrackFinding, units: "inch-pound" | "si"): string =>
  `${name}: ${words}${nearest ? `, ${nearest.distance === 0 ? `under the ${nearest.side} base` : `${shown(nearest.distance, "length", units)} from the ${nearest.side} base`}` : ""}`;
