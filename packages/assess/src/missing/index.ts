export type { Question } from "./question.ts";
export { settlingSet } from "./settle.ts";
