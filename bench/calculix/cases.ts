import type { Floor } from "@floorworthy/engine/plates";
import { floor, patches } from "./bay.ts";
import { type Mesh, meshFor } from "./mesh.ts";

/** The two cases that are kept: the slab as it is, and a weightless one that lifts off over half its area. */
export interface Case {
  readonly name: "bay" | "bay-lifted";
  readonly floor: Floor;
  readonly support: "both-ways" | "pushes-only";
}

export const cases: readonly Case[] = [
  { name: "bay", floor, support: "both-ways" },
  { name: "bay-lifted", floor: { ...floor, unitWeight: 0 }, support: "pushes-only" },
];

export const mesh: Mesh = meshFor(floor, patches, 50, 300);
