export { drawingToSvg } from "./drawing-to-svg.ts";
