import { controlLimit } from "@floorworthy/engine/bolts";
import { isUnable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { daysBetween } from "../facts/calendar.ts";
import { anchorLogs } from "./anchor-log.ts";
import { rulesFor, threadOf } from "./watch-rules.ts";

/** Nut turn, rad, above which a round on `day` rings for an anchor that only settles; anchors without earlier rounds have none. */
export const nextLimits = (job: Job, day: string): ReadonlyMap<string, number> => {
  const thread = threadOf(job);
  if (isUnable(thread)) return new Map();
  return new Map(
    anchorLogs(job).flatMap((log) => {
      const limit = log.from && controlLimit(log.visits, daysBetween(log.from, day), rulesFor(job, thread, log));
      return limit ? [[log.anchor, limit.limit] as const] : [];
    }),
  );
};
