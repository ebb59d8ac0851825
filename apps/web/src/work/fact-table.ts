import type { Unit } from "@floorworthy/engine/quantities";

/** A fact the page offers for typing. `*` stands for any place in a list; a range has two ends. */
export interface FactKind {
  readonly group: "Floor" | "Strength" | "Position" | "Lift" | "Anchors" | "The maker asks" | "Ground";
  readonly path: string;
  readonly label: string;
  /** base unit of its dimension */
  readonly unit: Unit;
  /** `always`: offered as unknown when the file does not have it */
  readonly offer: "always" | "if-there";
}

const kinds =
  (group: FactKind["group"], offer: FactKind["offer"] = "if-there") =>
  (path: string, label: string, unit: Unit): FactKind => ({ group, path, label, unit, offer });

const floor = kinds("Floor");
const strength = kinds("Strength");
const position = kinds("Position");
const lift = kinds("Lift");
const anchors = kinds("Anchors");
const asks = kinds("The maker asks");
const ground = kinds("Ground", "always");

export const factKinds: readonly FactKind[] = [
  { ...floor("floor.thickness", "thickness of the slab as named", "mm"), offer: "always" },
  floor("floor.readings[*].thickness", "thickness reading", "mm"),
  floor("floor.zones[*].thickness", "thickness", "mm"),
  floor("floor.ageDays", "age of the slab", "d"),
  { ...strength("floor.strength.specified", "strength ordered", "MPa"), offer: "always" },
  strength("floor.strength.cylinders[*].strength", "cylinder", "MPa"),
  strength("floor.strength.cores[*].strength", "core", "MPa"),
  position("columns.left[0]", "left column from the left wall", "mm"),
  position("columns.left.x", "left column from the left wall", "mm"),
  position("columns.left[1]", "left column from the back wall", "mm"),
  position("columns.left.y", "left column from the back wall", "mm"),
  position("columns.right[0]", "right column from the left wall", "mm"),
  position("columns.right.x", "right column from the left wall", "mm"),
  position("columns.right[1]", "right column from the back wall", "mm"),
  position("columns.right.y", "right column from the back wall", "mm"),
  lift("lift.rated", "rated load", "N"),
  lift("lift.columnWeight", "weight of one column", "N"),
  lift("lift.spacing", "between the columns", "mm"),
  lift("lift.tieHeight", "height of the overhead beam", "mm"),
  lift("lift.reachCar", "reach to a car's sills", "mm"),
  lift("lift.reachTruck", "reach to a truck's rails", "mm"),
  anchors("lift.anchors.product.effectiveEmbedment", "effective embedment hef", "mm"),
  anchors("lift.anchors.product.nominalEmbedment", "nominal embedment", "mm"),
  anchors("lift.anchors.product.diameter", "diameter", "mm"),
  anchors("lift.anchors.torque", "torque", "N·mm"),
  asks("lift.asks.thickness", "thickness", "mm"),
  asks("lift.asks.strength", "strength", "MPa"),
  asks("lift.asks.days", "days from pour to drilling", "d"),
  asks("lift.asks.edge", "anchor to edge", "mm"),
  asks("lift.asks.joint", "anchor to joint", "mm"),
  asks("lift.asks.crack", "anchor to crack", "mm"),
  ground("floor.ground.k", "modulus of subgrade reaction k", "N/mm³"),
  ground("floor.ground.bearing", "allowable ground pressure", "MPa"),
];

/** Is this the path of a fact of that kind? */
export const isOfKind = (path: string, kind: FactKind): boolean =>
  path.replace(/\[\d+\](?!$)/g, "[*]").replace(rangeEnd, "") === kind.path;

const rangeEnd = /\.(low|from|high|to)$/;

/** Which end of a range stands there. */
export const endOf = (path: string): "low end" | "high end" | undefined => {
  const key = rangeEnd.exec(path)?.[1];
  if (key === undefined) return undefined;
  return key === "low" || key === "from" ? "low end" : "high end";
};
