export { type Block, blockedBy } from "./blocked-by.ts";
export { type ClosedWindow, closedWindows } from "./closed-windows.ts";
export { feasiblePositions, type Placement } from "./feasible-positions.ts";
export type { LiftFootprint, Part, Turn } from "./lift-footprint.ts";
export type { Clear, Obstacle, Room } from "./obstacle.ts";
export type { Region } from "./region.ts";
export { type Move, smallestMove } from "./smallest-move.ts";
export type { Zone } from "./zone.ts";
