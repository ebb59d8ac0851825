export { developingFamilies } from "./developing/families.ts";
export { laidOut, type Measured, measure, pdfLibrary, tablesOf } from "./measure.ts";
export { reportFamilies } from "./report/families.ts";
