export { assess, type FirstLook, firstLook } from "./assess.ts";
export * from "./assessment.ts";
