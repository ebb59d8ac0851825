/** Invented lifts for invented manuals. Names, figures and sentences are made up here; no maker sells any of them. */
import { createGenerator } from "@floorworthy/engine/numerics";
import { toBase, type Unit } from "@floorworthy/engine/quantities";
import type { FieldName } from "@floorworthy/manuals";

export type System = "inch-pound" | "si";

export interface Amount {
  readonly n: number;
  readonly unit: Unit;
}

/** A number with its unit, or a word of the lift sheet. */
export type Said = Amount | string;
export type Facts = ReadonlyMap<FieldName, Said>;

export interface InventedLift {
  readonly name: string;
  readonly system: System;
  readonly models: readonly { readonly name: string; readonly own: Facts }[];
  /** what holds for every model */
  readonly shared: Facts;
}

const stems = ["Quarrel", "Ostrel", "Bravenne", "Tolvik", "Merrowby", "Zennick", "Caddow", "Ulverin"];
const codes = ["QZ-", "OT", "BV ", "TVK", "MW-", "ZN", "CDW ", "UL-"];

type Pick = <T>(list: readonly T[]) => T;

const lengthsOf = (pick: Pick, system: System) => ({
  of: (inches: readonly number[], mm: readonly number[]): Amount =>
    system === "si" ? { n: pick(mm), unit: "mm" } : { n: pick(inches), unit: "in" },
});

const sharedFacts = (pick: Pick, system: System): Facts => {
  const si = system === "si";
  const length = lengthsOf(pick, system).of;
  const embedment = length([3.25, 3.5, 3.75], [85, 90, 95]);
  const deep = si ? 15 : 0.75;
  const diameter: Amount = si ? { n: pick([16, 20]), unit: "mm" } : { n: pick([0.625, 0.75]), unit: "in" };
  return new Map<FieldName, Said>([
    ["top", pick(["overhead-tied", "free-standing"])],
    ["arms", pick(["symmetric", "asymmetric"])],
    ["spacing", length([124, 126.5, 130, 131.25], [3120, 3180, 3245, 3310])],
    ["base.width", length([17, 18, 19.5], [430, 460, 480])],
    ["base.depth", length([15, 15.5, 16], [380, 400, 410])],
    ["base.thickness", length([0.625, 0.75], [18, 20])],
    ["anchors.product.kind", pick(["expansion", "screw", "adhesive"])],
    ["anchors.product.diameter", diameter],
    ["anchors.product.length", length([5.5, 6, 6.5], [130, 140, 145])],
    ["anchors.product.nominalEmbedment", embedment],
    ["anchors.product.holeDiameter", si ? { n: diameter.n + 2, unit: "mm" } : diameter],
    ["anchors.product.holeDepth", { n: embedment.n + deep, unit: embedment.unit }],
    [
      "anchors.torque",
      si ? { n: pick([100, 110, 125, 140]), unit: "N·m" } : { n: pick([85, 95, 110, 120]), unit: "lb-ft" },
    ],
    ["anchors.firstRound", { n: pick([14, 20, 30]), unit: "d" }],
    ["anchors.roundEvery", { n: pick([3, 6]), unit: "month" }],
    ["anchors.shimLimit", length([0.375, 0.5], [10, 12])],
    ["asks.strength", si ? { n: pick([20, 25, 30]), unit: "MPa" } : { n: pick([3000, 3500, 4000]), unit: "psi" }],
    ["asks.days", { n: pick([21, 28, 30]), unit: "d" }],
    ["asks.edge", length([6, 6.5, 8], [150, 165, 200])],
    ["asks.joint", length([7, 9, 12], [180, 220, 300])],
    ["asks.crack", length([10, 11, 14], [240, 260, 350])],
    ["asks.wall", length([20, 24, 30], [500, 600, 750])],
    ["asks.reinforcement", pick(["mesh", "bars"])],
    ["asks.slope", si ? { n: pick([3, 5, 8]) / 1000, unit: "" } : { n: pick([1 / 8, 1 / 4, 3 / 16]) / 12, unit: "" }],
  ]);
};

const ownFacts = (pick: Pick, system: System, step: number): Facts => {
  const si = system === "si";
  const at = (inches: number, mm: number): Amount => (si ? { n: mm, unit: "mm" } : { n: inches, unit: "in" });
  const tall = pick([0, 1, 2]);
  return new Map<FieldName, Said>([
    ["rated", si ? { n: 3000 + 500 * step, unit: "kg" } : { n: 8000 + 1500 * step, unit: "lb" }],
    ["columnWeight", si ? { n: 285 + 35 * step, unit: "kg" } : { n: 610 + 65 * step, unit: "lb" }],
    ["overallHeight", at(139.5 + 3 * step + tall, 3540 + 80 * step + 10 * tall)],
    ["overallWidth", at(134 + 2.5 * step, 3410 + 65 * step)],
    ["asks.ceiling", at(146 + 3 * step + tall, 3700 + 80 * step + 10 * tall)],
    ["asks.thickness", at([5, 5.25, 5.5, 6, 6.5][step]!, [150, 160, 170, 180, 200][step]!)],
    ["anchors.count", { n: [5, 6, 6, 7, 8][step]!, unit: "" }],
  ]);
};

/** The same seed gives the same lift. */
export const inventLift = (seed: number, system: System, models: number): InventedLift => {
  const next = createGenerator(seed * 7919 + 13);
  const pick: Pick = (list) => list[Math.min(list.length - 1, Math.floor(next() * list.length))]!;
  const family = Math.floor(next() * stems.length);
  const first = Math.floor(next() * 3);
  const names = Array.from(
    { length: models },
    (_, i) => `${codes[family]}${7 + first + i}${pick(["", "A", "L", "X"])}`,
  );
  return {
    name: stems[family]!,
    system,
    models: names.map((name, i) => ({ name, own: ownFacts(pick, system, first + i) })),
    shared: sharedFacts(pick, system),
  };
};

/** A fact in base units, or its word. */
export const baseOf = (said: Said): number | string => (typeof said === "string" ? said : toBase(said.n, said.unit));
