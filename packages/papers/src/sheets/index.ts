export { sheetNames, sheets } from "./all-sheets.ts";
export { type ConcreteQuantity, concreteQuantities, type PourQuantity } from "./concrete-quantities.ts";
export { contractorSheet } from "./contractor-sheet.ts";
export type { Paper } from "./frame.ts";
export type { Sheet, SheetOptions } from "./sheet.ts";
