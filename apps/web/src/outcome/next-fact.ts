import type { Assessment, MissingFact } from "@floorworthy/assess";

/** The open question to answer first: the cheapest of the set that settles the outcome, else one that turns it; none that changes nothing. */
export const nextOf = ({ missing, settling }: Pick<Assessment, "missing" | "settling">): MissingFact | undefined =>
  missing.find(({ id }) => settling?.facts.includes(id)) ?? missing.find(({ flips }) => flips === "flips");
