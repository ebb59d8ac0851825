export type * from "./candidates/candidate.ts";
export { type FieldName, fieldNames } from "./candidates/field-names.ts";
export type * from "./glyphs/index.ts";
export type * from "./layout/blocks.ts";
export type { ManualReading, PageFound } from "./manual-reading.ts";
