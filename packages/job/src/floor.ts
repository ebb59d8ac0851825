import type { Point, Polygon } from "@floorworthy/engine/geometry";
import type { Choice, Quantity } from "./fact.ts";

/** The concrete, standing or to be poured, and all that is known about it. Plan coordinates mm, strengths MPa. */
export interface Floor {
  readonly state: "standing" | "to-be-poured";
  /** what the floor is */
  readonly kind: Choice<
    "slab-on-ground" | "suspended" | "hollow-core" | "deck" | "asphalt" | "pavers" | "timber" | "gravel"
  >;
  readonly below: Choice<"ground" | "space">;
  /** `none-shown`: drawings or a scan say no tendons; `suspected`: stamp, pockets, neighbourhood; `stamped` */
  readonly postTension: Choice<"none-shown" | "suspected" | "stamped">;
  /** heating tubes or wires in the slab */
  readonly heat: Choice<"none" | "located" | "not-located">;
  /** pipes, conduits and drains under or in the slab */
  readonly utilities: Choice<"none" | "located" | "not-located">;
  readonly movement: Choice<"none" | "heave" | "settlement" | "expansive-clay" | "frost">;
  readonly surface: Choice<"sound" | "dusts" | "spalled">;
  readonly layer: Choice<"none" | "bonded-topping" | "loose-topping" | "screed" | "tile">;
  /** the thickness somebody names for the slab as a whole, mm ("4-inch slab") */
  readonly thickness: Quantity;
  readonly readings: readonly ThicknessReading[];
  readonly zones: readonly Zone[];
  readonly strength: StrengthEvidence;
  /** date the panel under the lift was last poured, or its age in days at the job's date */
  readonly poured: string | undefined;
  readonly ageDays: Quantity;
  readonly reinforcement: Choice<"none" | "mesh" | "bars" | "fibre">;
  readonly bars: readonly Bars[];
  readonly ground: Ground;
  readonly joints: readonly Joint[];
  readonly cracks: readonly Crack[];
  readonly pipes: readonly Pipe[];
  /** rise over run */
  readonly slope: Quantity;
}

/** One look at how thick the slab is at one place. */
export interface ThicknessReading {
  /** plan place; or at a base when only that was written */
  readonly at: Point | undefined;
  readonly near: "left" | "right" | "middle" | "edge" | undefined;
  readonly thickness: Quantity;
  readonly method: "drill" | "core" | "impact-echo" | "radar" | "drawing" | "edge-look";
  /** `through`: the underside was felt; `still-concrete`: the mark was flush and the slab goes on; `dropped`: the bit dropped before the mark */
  readonly end: "through" | "still-concrete" | "dropped";
  readonly under: Choice<"gravel" | "sand" | "clay" | "soil" | "void" | "wet" | "foam" | "vapour-sheet">;
  readonly place: "slab" | "thickened-edge";
  /** how much of the thickness read is a topping, screed or tile on the slab, mm */
  readonly layer?: Quantity;
  readonly note: string | undefined;
}

/** A part of the slab with a thickness of its own, standing or proposed. */
export interface Zone {
  readonly name: string;
  readonly kind: "slab" | "pad" | "strip" | "thickened-edge" | "footing" | "topping";
  readonly state: "standing" | "proposed";
  readonly outline: Polygon;
  readonly thickness: Quantity;
  /** horizontal run per unit of extra depth of the sides; 0 = vertical */
  readonly sideSlope: number;
  readonly tied: Choice<"cast-with" | "dowelled" | "undercut" | "separate">;
  /** strength of a pad's own concrete when it differs, MPa */
  readonly strength: Quantity;
  readonly poured: string | undefined;
}

export interface StrengthEvidence {
  /** ordered or specified f'c, MPa */
  readonly specified: Quantity;
  /** delivery tickets kept */
  readonly tickets: Choice<"in-hand" | "lost">;
  readonly cylinders: readonly CylinderTest[];
  readonly cores: readonly CoreTest[];
  readonly rebound: readonly Quantity[];
  /** a figure called "tensile" in the thousands of psi: kept, explained, never used */
  readonly tensileAsPrinted: Quantity;
}

export interface CylinderTest {
  readonly strength: Quantity;
  readonly ageDays: number;
  readonly cured: "standard" | "field";
}

export interface CoreTest {
  readonly strength: Quantity;
  readonly diameter: Quantity;
  readonly length: Quantity;
  readonly moisture: Choice<"as-received" | "soaked" | "dry">;
  readonly at: Point | undefined;
}

export interface Bars {
  readonly size: string;
  readonly spacing: Quantity;
  readonly depth: Quantity;
  readonly direction: "x" | "y" | "both";
}

export interface Ground {
  readonly soil: Choice<"gravel" | "sand" | "silt" | "clay" | "organic" | "rock">;
  readonly wet: Choice<"dry" | "damp" | "wet">;
  readonly base: Choice<"none" | "gravel" | "crushed-stone">;
  readonly foam: Choice<"none" | "under-slab" | "everywhere">;
  /** modulus of subgrade reaction, N/mm³ */
  readonly k: Quantity;
  /** allowable ground pressure, MPa */
  readonly bearing: Quantity;
  readonly voids: Choice<"none" | "found">;
}

/** `none` is the default load transfer: what crosses an open line is not counted. */
export interface Joint {
  readonly name: string;
  readonly kind: "saw-cut" | "construction" | "isolation" | "cold" | "tooled";
  readonly from: Point;
  readonly to: Point;
  readonly transfer: Choice<"none" | "interlock" | "dowels">;
  /** how far the two sides stand apart, mm */
  readonly opening?: Quantity;
  readonly dowelDiameter?: Quantity;
  readonly dowelSpacing?: Quantity;
  readonly state: "standing" | "proposed";
}

export interface Crack {
  readonly name: string;
  readonly line: readonly Point[];
  readonly width: Quantity;
  /** difference of level across the crack, mm */
  readonly step: Quantity;
  readonly seen: readonly { readonly on: string; readonly width: Quantity; readonly length: Quantity }[];
}

export interface Pipe {
  readonly name: string;
  readonly kind: "water" | "drain" | "gas" | "conduit" | "heating" | "unknown";
  readonly line: readonly Point[];
  readonly depth: Quantity;
  /** to be kept clear of drilling to either side, mm */
  readonly clear: Quantity;
}
