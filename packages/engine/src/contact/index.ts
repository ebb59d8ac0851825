export type { BasePlate, ContactResult, PlateAnchor, PlateMovement } from "./base-plate.ts";
export { positivePieces } from "./contact-zone.ts";
export { settlementAt, solveContact } from "./solve-contact.ts";
