export { type Change, changed, confirmed, type Decision } from "./confirming.ts";
export { type Asked, type LiftSheet, liftSheet, type SheetOptions } from "./lift-sheet.ts";
export { type Proposal, proposalsFor } from "./proposals.ts";
export { inWords } from "./questions.ts";
