export type { AnchorAnswer, AnchorHistory, RoundReading } from "./anchor-history.ts";
export { noRoundWords, type UpkeepAnswer } from "./answer-words.ts";
export { nextLimits } from "./next-limits.ts";
export { preloadTerms, torqueSays } from "./preload-terms.ts";
export { degrees, printMovement, printTorque, torqueUnit } from "./printed.ts";
export { heaviestBefore, lastRound, type NextRound, nextRound, type RoundReason } from "./round-due.ts";
export { type RoundDay, roundsAhead } from "./rounds.ts";
export { type Upkeep, upkeepOf } from "./upkeep.ts";
export { watchAnchors } from "./watch-anchors.ts";
