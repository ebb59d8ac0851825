import type { Polygon } from "../geometry/index.ts";

/** One anchor of a base plate, in the plate's own axes. */
export interface PlateAnchor {
  readonly id: string;
  /** mm */
  readonly x: number;
  readonly y: number;
  /** axial, N/mm: pull of the anchor per lift of the plate at its place */
  readonly stiffness: number;
  /** tension set by torque before any load comes, N */
  readonly preload: number;
}

/** A plate stiff against the concrete it stands on. */
export interface BasePlate {
  /** any simple polygon, mm, about the origin at which the Reaction acts */
  readonly outline: Polygon;
  readonly anchors: readonly PlateAnchor[];
  /** pressure per settlement, N/mm³ */
  readonly bedding: number;
}

/** Settlement `w0 + tiltX·x + tiltY·y` of a rigid plate, mm, downward positive; tilts in radians. */
export interface PlateMovement {
  readonly settlement: number;
  readonly tiltX: number;
  readonly tiltY: number;
}

/** A rigid plate at rest under its load. */
export interface ContactResult extends PlateMovement {
  /** total pull of each anchor, preload included, N */
  readonly anchorTension: readonly { readonly id: string; readonly T: number }[];
  /** pressure `p0 + px·x + py·y` on the contact zone, MPa; zero outside it */
  readonly pressure: { readonly p0: number; readonly px: number; readonly py: number };
  /** where the plate presses; several pieces where a plate is notched */
  readonly contactZone: readonly Polygon[];
  /** mm² */
  readonly contactArea: number;
  /** MPa */
  readonly maxPressure: number;
  /** what is left of each equilibrium equation, relative to load and preloads together (moments: times √area) */
  readonly residual: { readonly P: number; readonly Mx: number; readonly My: number };
  readonly iterations: number;
}
