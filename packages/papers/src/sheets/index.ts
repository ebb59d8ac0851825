export { type ConcreteQuantity, concreteQuantities, type PourQuantity } from "./concrete-quantities.ts";
export { type ContractorOptions, contractorSheet, type Paper } from "./contractor-sheet.ts";
