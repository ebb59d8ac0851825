import type { PartId } from "./parts.ts";

/** Scrolls to a part of the job; also to the one the address names already. */
export const bringIntoSight = (part: PartId): void =>
  document.getElementById(`part-${part}`)?.scrollIntoView({ block: "start" });
