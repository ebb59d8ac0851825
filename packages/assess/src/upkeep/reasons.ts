import type { Job } from "@floorworthy/job";
import type { CrackWatch } from "../crack-watch/watch-cracks.ts";
import type { AnchorHistory } from "./anchor-history.ts";
import { printMovement } from "./printed.ts";
import type { NextRound } from "./round-due.ts";

export const installed = (job: Job): boolean => job.installation !== undefined || job.visits.length > 0;

/** Why nothing may be lifted, gravest first: anchors that moved most, then cracks. Empty for a lift not installed yet. */
export const graveReasons = (job: Job, anchors: readonly AnchorHistory[], cracks: readonly CrackWatch[]): string[] =>
  installed(job)
    ? [
        ...anchors
          .filter(({ answer }) => answer === "out-of-service")
          .toSorted((a, b) => (b.moved ?? 0) - (a.moved ?? 0))
          .map(({ sentence }) => sentence),
        ...cracks.filter(({ answer }) => answer === "out-of-service").map(({ sentence }) => sentence),
      ]
    : [];

export const softReasons = (
  anchors: readonly AnchorHistory[],
  cracks: readonly CrackWatch[],
  next: NextRound | undefined,
): string[] => {
  const unread = anchors.filter(({ answer }) => answer === "not-read").map(({ anchor }) => anchor);
  return [
    ...anchors.filter(({ answer }) => answer === "retorque-and-look").map(({ sentence }) => sentence),
    ...cracks.filter(({ answer }) => answer === "look").map(({ sentence }) => sentence),
    ...(next && next.standing !== "ahead" ? [`The round of ${next.date} is due: ${next.reason.words}.`] : []),
    ...(unread.length > 0 && unread.length < anchors.length
      ? [`Not read at any round: ${unread.join(", ")}. An anchor nobody reads is not sound.`]
      : []),
  ];
};

/** Sides whose anchors or concrete have let go; both where a name does not tell. */
export const failedSides = (anchors: readonly AnchorHistory[], cracks: readonly CrackWatch[]): ("left" | "right")[] => {
  const names = [
    ...anchors.filter(({ answer }) => answer === "out-of-service").map(({ anchor }) => anchor),
    ...cracks
      .filter(({ answer }) => answer === "out-of-service")
      .flatMap(({ near }) => near.map(({ anchor }) => anchor)),
  ].map((name) => name.charAt(0).toUpperCase());
  const told = names.length > 0 && names.every((letter) => letter === "L" || letter === "R");
  if (!told) return ["left", "right"];
  return (["left", "right"] as const).filter((side) => names.includes(side === "left" ? "L" : "R"));
};

/** All in one line, and the anchor that moved most. */
export const calmReasons = (job: Job, anchors: readonly AnchorHistory[]): string[] => {
  const sound = anchors
    .filter(({ answer, rounds }) => answer === "sound" && rounds.length > 0)
    .toSorted((a, b) => (b.moved ?? 0) - (a.moved ?? 0));
  const most = sound[0];
  if (!most) return [];
  return [
    `${sound.length === 1 ? "The one anchor read is" : `All ${sound.length} anchors are`} within ${printMovement(most.limit, job.units)} of movement. The one that moved most: ${most.sentence}`,
  ];
};
