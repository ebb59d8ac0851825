export { findValues } from "./find-values.ts";
export type { FoundValue } from "./found-value.ts";
export { numberWords, spokenNumber } from "./number-words.ts";
