export * from "./candidates/index.ts";
export * from "./glyphs/index.ts";
export * from "./layout/index.ts";
export type { ManualReading, PageFound } from "./manual-reading.ts";
export { readingOf } from "./reading-of.ts";
export * from "./sheet/index.ts";
