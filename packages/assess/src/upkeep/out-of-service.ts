import type { Job } from "@floorworthy/job";
import type { Stop } from "../assessment.ts";
import { watchCracks } from "../crack-watch/watch-cracks.ts";
import { notAfterFailure } from "./after-failure.ts";
import { steps } from "./answer-words.ts";
import { graveReasons, installed } from "./reasons.ts";
import { watchAnchors } from "./watch-anchors.ts";

/** Out of service in the words of a stop, for the assessment; undefined while nothing forbids lifting. */
export const outOfService = (job: Job): Stop | undefined => {
  if (!installed(job)) return undefined;
  const reasons = graveReasons(job, watchAnchors(job, "last"), watchCracks(job));
  const first = reasons[0];
  if (first === undefined) return undefined;
  return {
    id: "anchors-over-the-years",
    outcome: "out-of-service",
    reason: [first, ...alsoWords(reasons.slice(1))].join(" "),
    next: `${steps["out-of-service"][0]} ${notAfterFailure.join(" ")} Cut and pour anew or set new anchors outside the old cones; look at the other side as well.`,
  };
};

/** The others in a few words each: what stands before the colon. */
const alsoWords = (others: readonly string[]): string[] =>
  others.length === 0 ? [] : [`Also: ${others.map((words) => words.split(":")[0]!.replace(/\.$/, "")).join("; ")}.`];
