import { elasticModulus, modulusOfRupture } from "@floorworthy/engine/codes/aci318-19";
import { type Check, fromBase, isUnable, toBase, type Unable } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { factsOf } from "../facts/facts.ts";
import { anchorChecks } from "../margin/anchors.ts";
import { type BaseCase, baseCases } from "../margin/cases.ts";
import { type MarginInputs, marginInputs } from "../margin/inputs.ts";
import type { PadDesign } from "./design.ts";

/** What the loads and anchors come to in concrete of one depth; the pad's plan changes none of it. */
export interface PadSetting {
  readonly inputs: MarginInputs;
  /** the load cases that count */
  readonly counted: readonly BaseCase[];
  /** modulus of elasticity and of rupture of the pad, MPa */
  readonly E: number;
  readonly fr: number;
}

/** Remembers, by depth, what does not depend on the plan. */
export interface PadMemory {
  readonly settings: Map<string, PadSetting | Unable>;
  readonly anchors: Map<string, AnchorMargin>;
  /** plates solved, by size, depth and join: steel and fibre change nothing before the first crack */
  readonly plates: Map<string, SolvedPad | Unable>;
}

/** What the plate on the ground says of one pad. */
export interface SolvedPad {
  /** modulus of rupture over stress, and which concrete cracks first */
  readonly crack: number;
  readonly crackIn: "pad" | "slab";
  /** on the ground, own weight included, MPa */
  readonly pressure: number;
  readonly checks: readonly Check[];
}

/** What a setting depends on. */
export const settingKey = ({ depth, strength, size }: PadDesign): string =>
  `${depth}|${strength}|${size.shape === "whole-bay" ? "floor" : "pad"}`;

export const newMemory = (): PadMemory => ({ settings: new Map(), anchors: new Map(), plates: new Map() });

export const settingFor = (job: Job, memory: PadMemory, key: string): PadSetting | Unable => {
  const known = memory.settings.get(key);
  if (known) return known;
  const made = settingOf(job);
  memory.settings.set(key, made);
  return made;
};

const settingOf = (job: Job): PadSetting | Unable => {
  const facts = factsOf(job);
  const inputs = marginInputs(job, facts, "worst");
  if (isUnable(inputs)) return inputs;
  const cases = baseCases(job, inputs, facts.bases);
  if (isUnable(cases)) return cases;
  const psi = fromBase(Math.min(...inputs.concrete.map(({ f }) => f)), "psi");
  return {
    inputs,
    counted: cases.filter(({ standing }) => standing === "counted"),
    E: toBase(elasticModulus(psi), "psi"),
    fr: toBase(modulusOfRupture(psi), "psi"),
  };
};

/** Allowance over demand of the anchors that hold least, cracked. */
export interface AnchorMargin {
  readonly margin: number;
  readonly governs: string;
}

export const anchorMarginFor = (
  job: Job,
  { inputs, counted }: PadSetting,
  memory: PadMemory,
  key: string,
): AnchorMargin => {
  const known = memory.anchors.get(key);
  if (known) return known;
  const worst = anchorChecks(job, inputs, counted, "limit")
    .checks.filter((c) => c.weight === "limit" && c.concrete !== "uncracked")
    .reduce<{ ratio: number; title: string } | undefined>((a, b) => (a && a.ratio >= b.ratio ? a : b), undefined);
  const made = {
    margin: worst && worst.ratio > 0 ? 1 / worst.ratio : Number.POSITIVE_INFINITY,
    governs: worst?.title ?? "",
  };
  memory.anchors.set(key, made);
  return made;
};
