export { templateDrawing } from "./template-drawing.ts";
export { templatePages } from "./template-pages.ts";
