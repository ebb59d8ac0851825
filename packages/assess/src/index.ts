export { assess } from "./assess.ts";
export * from "./assessment.ts";
