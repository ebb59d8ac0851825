import { coarseThread, nutTravel, type Thread, usualWatchRules, type WatchRules } from "@floorworthy/engine/bolts";
import { type Unable, unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { AnchorLog } from "./anchor-log.ts";

/** The stud's thread, or why a turn of the nut cannot be read as a movement. */
export const threadOf = ({ lift }: Job): Thread | Unable => {
  const { diameter, kind } = lift.anchors.product;
  if (kind.known && kind.value === "screw")
    return unable("anchor watch", "a screw anchor has no nut: how far it turned says nothing of how far it moved");
  if (!diameter.known) return unable("anchor watch", "the diameter of the bolts is not known, so the pitch is not");
  return (
    coarseThread(diameter.value) ??
    unable("anchor watch", `no coarse thread has the diameter written (${diameter.written})`)
  );
};

/** The limit of take-up or rise, mm, and on whose word. */
export const movementLimit = ({ lift }: Job): { readonly value: number; readonly basis: string } => {
  const makers = lift.anchors.movementLimit;
  return makers?.known
    ? { value: makers.low, basis: "the maker's limit" }
    : { value: usualWatchRules(1).limit, basis: "common practice, no source" };
};

export const rulesFor = (job: Job, { pitch }: Thread, log: AnchorLog): WatchRules => ({
  ...usualWatchRules(pitch),
  limit: Math.max(0, movementLimit(job).value - nutTravel(log.turnedBefore, pitch)),
  ...(log.setTo === undefined ? {} : { settingTorque: log.setTo }),
});
