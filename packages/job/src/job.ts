import type { Point, Polygon } from "@floorworthy/engine/geometry";
import type { Choice, Quantity } from "./fact.ts";
import type { CylinderTest, Floor } from "./floor.ts";
import type { Lift } from "./lift.ts";

/** One lift for one floor: everything a person told us, in base units, nothing judged yet. */
export interface Job {
  readonly format: 1;
  readonly title: string;
  readonly customer: string | undefined;
  readonly place: string | undefined;
  /** calendar date the job was looked at, YYYY-MM-DD; needed where an age is counted */
  readonly date: string | undefined;
  readonly units: "inch-pound" | "si";
  readonly setting: Setting;
  readonly lift: Lift;
  readonly floor: Floor;
  readonly bay: Bay;
  readonly position: Position | undefined;
  readonly vehicles: readonly Vehicle[];
  readonly pad: PadWishes;
  readonly pour: Pour | undefined;
  readonly prices: Prices;
  readonly installation: Installation | undefined;
  readonly visits: readonly Visit[];
  readonly choices: Choices;
}

export interface Setting {
  readonly use: Choice<"home" | "shop" | "public">;
  readonly permit: Choice<"not-required" | "required" | "granted">;
  readonly seismic: Choice<"A" | "B" | "C" | "D" | "E" | "F">;
  readonly weather: Choice<"indoors" | "open-bay" | "outdoors">;
  /** hillside, retaining wall or cut and fill near the slab */
  readonly slopeNear: Choice<"none" | "near">;
  readonly slabOwner: Choice<"customer" | "landlord-consents" | "landlord-not-asked">;
}

export interface Bay {
  /** the floor's plan, mm; its boundary is the slab's edge */
  readonly outline: Polygon | undefined;
  readonly walls: readonly Wall[];
  readonly doors: readonly Door[];
  /** columns of the building */
  readonly posts: readonly { readonly name: string; readonly outline: Polygon }[];
  readonly ceiling: Quantity;
  /** free way to keep at the back, mm */
  readonly walkway: Quantity;
  /** things on the floor that stay (benches, stairs) */
  readonly obstacles: readonly { readonly name: string; readonly outline: Polygon }[];
}

export interface Wall {
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
}

export interface Door {
  readonly name: string;
  readonly from: Point;
  readonly to: Point;
  readonly height: Quantity;
}

/** Centres of the two columns (or of the lift's supports) as wanted. */
export interface Position {
  readonly left: Point;
  readonly right: Point;
}

export interface Vehicle {
  readonly name: string;
  readonly weight: Quantity;
  readonly frontAxle: Quantity;
  readonly rearAxle: Quantity;
  readonly wheelbase: Quantity;
  readonly length: Quantity;
  /** over the body, mirrors folded, mm */
  readonly width: Quantity;
  /** of the roof over the floor, mm */
  readonly height: Quantity;
  /** centre of gravity behind the nose, mm */
  readonly noseToCentre: Quantity;
  readonly frame: Choice<"unibody" | "body-on-frame">;
  /** fore-aft distance of its pick-up points, mm */
  readonly pickupSpacing: Quantity;
  /** where its centre of gravity stands on this lift, from the line of the columns, mm, + toward the door */
  readonly offset?: Quantity;
  /** first day it is lifted; undefined: from the beginning */
  readonly since?: string | undefined;
}

export interface Pour {
  readonly date: string | undefined;
  readonly strength: Quantity;
  readonly slump: Quantity;
  readonly air: Quantity;
  readonly cement: Choice<"I" | "II" | "III" | "blended">;
  readonly fibre: Quantity;
  /** spells of the concrete's or the air's temperature after the pour */
  readonly temperatures: readonly {
    readonly fromDay: number;
    readonly toDay: number | undefined;
    readonly mean: Quantity;
  }[];
  /** lowest and highest of single days; they count before the spells */
  readonly days?: readonly PourDayTemperatures[];
  /** for the days nobody has measured */
  readonly months?: readonly { readonly month: MonthName | undefined; readonly mean: Quantity }[];
  readonly covers?: readonly PourCover[];
  readonly weather?: PourWeather | undefined;
  /** cast from this pour */
  readonly cylinders?: readonly CylinderTest[];
  /** what was noted at each truck; records, not judged */
  readonly tickets?: readonly PourTicket[];
  readonly waste: Quantity;
}

/** One truck as it came. Lengths mm, temperatures °C. */
export interface PourTicket {
  readonly load: string;
  readonly ticket: string | undefined;
  readonly time: string | undefined;
  readonly slump: Quantity;
  readonly temperature: Quantity;
  readonly water: string | undefined;
  readonly cylinders: string | undefined;
  readonly note: string | undefined;
}

/** One day by the thermometer, °C. The day is a date or counted from the pour, which is day 0. */
export interface PourDayTemperatures {
  readonly on: string | undefined;
  readonly day: number | undefined;
  readonly low: number;
  readonly high: number;
}

export type MonthName =
  | "january"
  | "february"
  | "march"
  | "april"
  | "may"
  | "june"
  | "july"
  | "august"
  | "september"
  | "october"
  | "november"
  | "december";

/** A blanket or a heater, days counted from the pour. */
export interface PourCover {
  readonly what: "blanket" | "heater";
  readonly fromDay: number;
  readonly toDay: number | undefined;
  /** what the concrete is kept above, °C */
  readonly holds: Quantity;
}

/** °C, a share from 0 to 1, m/s */
export interface PourWeather {
  readonly air: Quantity;
  readonly humidity: Quantity;
  readonly wind: Quantity;
  readonly concrete: Quantity;
}

/** What a person wants of the thick concrete under the columns. Lengths mm. */
export interface PadWishes {
  readonly shape: Choice<"two-pads" | "joined-circles" | "strip" | "whole-bay">;
  readonly join: Choice<"cast-with" | "dowelled" | "undercut" | "separate">;
  readonly reinforcement: Choice<"none" | "bars" | "fibre">;
  readonly collapseMargin: Quantity;
  readonly anchorMargin: Quantity;
  readonly groundMargin: Quantity;
  readonly leastDepth: Quantity;
  readonly mostDepth: Quantity;
  readonly clearToWall: Quantity;
  readonly planStep: Quantity;
  readonly depthStep: Quantity;
}

/** Money in the job's own currency: per mm³ of volume, mm² of area, mm of length, N of weight, day of time, or for each. */
export interface Prices {
  readonly currency: string | undefined;
  readonly concrete: Quantity;
  readonly shortLoad: Quantity;
  /** mm³: from here on no fee */
  readonly fullLoad: Quantity;
  readonly bag: Quantity;
  /** N */
  readonly bagWeight: Quantity;
  readonly bar: Quantity;
  readonly mesh: Quantity;
  readonly fibre: Quantity;
  readonly dowel: Quantity;
  readonly vapourSheet: Quantity;
  readonly baseCourse: Quantity;
  readonly formwork: Quantity;
  readonly saw: Quantity;
  readonly sawCall: Quantity;
  readonly jointSaw: Quantity;
  readonly breakOut: Quantity;
  readonly removal: Quantity;
  readonly labour: Quantity;
}

export interface Installation {
  readonly date: string | undefined;
  readonly installer: string | undefined;
  /** training or licence of the installer */
  readonly qualification: string | undefined;
  /** of the lift, from its data plate */
  readonly serial: string | undefined;
  /** number of the lift's certification label */
  readonly label: string | undefined;
  /** anchor product and lot */
  readonly lot: string | undefined;
  /** which torque wrench, and when it was checked */
  readonly wrench: string | undefined;
  /** what was run and lifted before handing over */
  readonly trial: Choice<"empty" | "empty-and-loaded" | "not-done">;
  readonly instructed: Choice<"yes" | "no">;
  readonly beam: Choice<"fitted" | "not-fitted">;
  readonly plumb: Choice<"plumb" | "not-plumb">;
  readonly holes: readonly HoleRecord[];
  /** floor levels at the corners of each base, mm over one common mark; higher is more */
  readonly levels: readonly FloorLevel[];
}

/** Corners of a base in the plan: back toward the back wall, front toward the door. */
export type BaseCorner = "back-left" | "back-right" | "front-left" | "front-right";

export interface FloorLevel {
  readonly base: "left" | "right";
  readonly corner: BaseCorner;
  readonly level: Quantity;
}

export interface HoleRecord {
  readonly anchor: string;
  readonly depth: Quantity;
  readonly met: Choice<"nothing" | "bar" | "void" | "tube" | "conduit" | "tendon">;
  readonly clean: Choice<"yes" | "no">;
  readonly projection: Quantity;
  readonly torque: Quantity;
  /** of the nut from snug to its torque, rad */
  readonly turned: Quantity;
}

/** One round of the nuts. */
export interface Visit {
  readonly date: string;
  readonly who: string | undefined;
  readonly temperature: Quantity;
  readonly wrench: string | undefined;
  readonly readings: readonly {
    readonly anchor: string;
    readonly found: Quantity;
    /** angle the nut turned to restore the torque, rad */
    readonly turned: Quantity;
    readonly projection: Quantity;
    readonly state?: Choice<"holds" | "spins" | "snapped" | "missing">;
    readonly sound?: Choice<"solid" | "hollow">;
    readonly note: string | undefined;
  }[];
}

/** What the person wants of the judgement; each has a default with its reason (see defaults.ts). */
export interface Choices {
  readonly uneven: Quantity;
  readonly dynamicFactor: Quantity;
  readonly workForce: Quantity;
  readonly bedding: Quantity;
  readonly firstCrackMargin: Quantity;
  readonly lifts: readonly Lift[];
}
