export { crossPattern } from "./cross-pattern.ts";
export type { Drilling } from "./ground.ts";
export type { HoleCheck } from "./hole-check.ts";
export type { HoleDetail } from "./hole-detail.ts";
export type { Datum, Mark } from "./marks.ts";
export { type SetOut, setOut, type TorqueCard } from "./set-out.ts";
export type { Diagonal, SquareCheck } from "./square.ts";
