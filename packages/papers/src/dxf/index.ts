export { drawingToDxf } from "./drawing-to-dxf.ts";
