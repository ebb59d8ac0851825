import type { Job } from "@floorworthy/job";
import type { CrackWatch } from "../crack-watch/watch-cracks.ts";
import type { AnchorHistory } from "./anchor-history.ts";
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
