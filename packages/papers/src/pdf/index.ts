export { drawingToPdf, type PdfMeta } from "./drawing-to-pdf.ts";
