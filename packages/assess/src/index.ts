export { assess, type FirstLook, firstLook } from "./assess.ts";
export * from "./assessment.ts";
export { asOneBase, baseName, type Column, columnsOf } from "./columns.ts";
