/** What the plate solver is asked: a floor on the ground, its loads, how to look at it. Units N, mm, MPa. */
import type { Point, Polygon, Rect } from "../geometry/index.ts";

export interface Floor {
  /** the slab panel; its boundary is a free edge unless `edges` says otherwise */
  readonly outline: Rect;
  /**
   * a convex part of the outline, mm: only that is concrete, the rest is not there. Its rim is a free edge at any angle: a
   * crack or slab edge that runs aslant. Without it the floor fills its outline.
   */
  readonly within?: Polygon;
  /** mm, where no zone says otherwise */
  readonly thickness: number;
  /** thickened (or thinned) rectangles; where they overlap the later one wins */
  readonly zones: readonly Zone[];
  /** MPa */
  readonly E: number;
  /** Poisson's ratio */
  readonly nu: number;
  /** modulus of subgrade reaction, N/mm³ */
  readonly k: number;
  /** N/mm³; 0 = weightless */
  readonly unitWeight: number;
  readonly joints: readonly Joint[];
  /** how the boundary is held; free where nothing is said */
  readonly edges?: Readonly<Partial<Record<Side, Edge>>>;
}

export interface Zone {
  readonly rect: Rect;
  /** mm */
  readonly thickness: number;
}

export type Side = "x0" | "x1" | "y0" | "y1";

/** `free`; `simple` = does not go down or up; `clamped` = nor turn */
export type Edge = "free" | "simple" | "clamped";

/**
 * A joint, saw cut or crack along x = at (axis "x") or y = at (axis "y"), from `from` to `to` along the line, the whole
 * line where they are missing. Beyond its ends the slab is whole.
 */
export interface Joint {
  /** the coordinate that is constant along the joint */
  readonly axis: "x" | "y";
  /** mm */
  readonly at: number;
  readonly from?: number;
  readonly to?: number;
  readonly transfer: Transfer;
}

export type Transfer =
  /** nothing crosses: two free edges */
  | { readonly kind: "none" }
  /** the two sides go down together and turn freely */
  | { readonly kind: "hinge" }
  /** `shear`: N per mm of difference in deflection, per mm of joint; `rotation`: N·mm per rad, per mm of joint */
  | { readonly kind: "springs"; readonly shear: number; readonly rotation: number };

export type FloorLoad =
  /** p = p0 + px·x + py·y over the polygon, MPa, plan coordinates, down positive */
  | {
      readonly kind: "pressure";
      readonly polygon: Polygon;
      readonly p0: number;
      readonly px: number;
      readonly py: number;
    }
  /** N, down positive: an anchor's pull is negative */
  | { readonly kind: "point"; readonly x: number; readonly y: number; readonly P: number };

export interface FloorCase {
  readonly name: string;
  readonly loads: readonly FloorLoad[];
}

export interface FloorOptions {
  /** `pushes-only`: the ground carries no tension; `both-ways`: it does (closed forms assume it) */
  readonly support: "pushes-only" | "both-ways";
  /** base plates and whatever else must be resolved: at least four spans across each */
  readonly focus: readonly Rect[];
  /** 1 as a rule; 2 halves every span */
  readonly fineness?: number;
  /**
   * `through-depth` (as a rule): a point force acts on the square that stands for Westergaard's equivalent radius under
   * a point, b = 0.325 h, because the moment right under a point is infinite in a thin plate. `sharp`: a true point.
   */
  readonly pointForces?: "through-depth" | "sharp";
}

/** Moments per unit width, N·mm/mm; positive = tension at the underside. Mxy turns as the tensor does. */
export interface Moments {
  readonly Mx: number;
  readonly My: number;
  readonly Mxy: number;
}

export interface Peak {
  readonly value: number;
  readonly at: Point;
}

/** A principal tensile stress, MPa, and what made it: `moment` N·mm/mm, `thickness` mm, value = 6 moment / thickness². */
export interface StressPeak extends Peak {
  readonly face: "bottom" | "top";
  readonly moment: number;
  readonly thickness: number;
}

export interface Governing {
  /** largest tensile stress of the underside, point by point; h away from pad edges instead of at them */
  readonly stressBottom: StressPeak;
  readonly stressTop: StressPeak;
  /** the same after averaging the moments over a square of side h, clipped to one panel and one thickness */
  readonly stressBottomAveraged: StressPeak;
  readonly stressTopAveraged: StressPeak;
  /** largest stress along every edge of a thickened zone, h of the thinner side away from it */
  readonly thinSideOfPadEdge?: StressPeak;
  readonly thickSideOfPadEdge?: StressPeak;
  /** MPa, own weight included */
  readonly groundPressure: Peak;
  /** mm below the place where the slab was cast, thin-plate */
  readonly deflection: Peak;
  /** mm of air under the slab; undefined where it touches everywhere */
  readonly uplift: Peak | undefined;
}

/** Relative: |sum of forces| / sum of |forces|, and moments about the middle likewise over force times half diagonal. */
export interface Equilibrium {
  readonly force: number;
  readonly Mx: number;
  readonly My: number;
}

export interface FloorResult {
  readonly name: string;
  /** mm, down positive, thin plate, from the level at which the slab was cast; NaN-free: clamps p to the outline */
  deflectionAt(p: Point): number;
  /** mm to add to `deflectionAt` for the shear the thin plate leaves out */
  shearDeflectionAt(p: Point): number;
  rotationAt(p: Point): { readonly dwdx: number; readonly dwdy: number };
  momentsAt(p: Point): Moments;
  /** MPa, own weight included, never negative when the ground only pushes */
  groundPressureAt(p: Point): number;
  readonly governing: Governing;
  readonly equilibrium: Equilibrium;
  /** factorisations this case needed; 0 when an earlier case's contact served */
  readonly iterations: number;
  readonly unknowns: number;
}
