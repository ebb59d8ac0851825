export { pdfForNode } from "./pdf-for-node.ts";
export type { Crop } from "./pictures.ts";
export { type Bounds, drawLines, type ReadManualOptions, readManual, type WorkerProgram } from "./read-manual.ts";
export { type Brought, type Errand, runErrand, serveErrand } from "./reading-room.ts";
