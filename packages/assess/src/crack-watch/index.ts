export type { CrackVerdict } from "./crack-growth.ts";
export { type CrackAnswer, type CrackWatch, watchCracks } from "./watch-cracks.ts";
