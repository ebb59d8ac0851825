import {
  groundPressure,
  type PadGround,
  padResultant,
  padSectionChecks,
  sectionStrength,
  separatePadChecks,
  stripBending,
} from "@floorworthy/engine/pads";
import { type Check, isUnable, type Term } from "@floorworthy/engine/quantities";
import { presumptiveSoils, type SoilClass } from "@floorworthy/engine/slabs";
import type { Job } from "@floorworthy/job";
import { boxOf } from "../layout.ts";
import type { BaseCase } from "../margin/cases.ts";
import { governing } from "../margin/slab.ts";
import type { PadDesign } from "./design.ts";
import type { PadPart } from "./outlines.ts";
import type { PadSetting } from "./setting.ts";
import { padSection } from "./steel.ts";

const UNIT_WEIGHT = 23.56e-6;
const LOAD_FACTOR = 1.6;

const soilClass: Readonly<Record<string, SoilClass>> = {
  gravel: "gravel",
  sand: "sand or silty or clayey sand and gravel",
  rock: "sedimentary or foliated rock",
};

const groundOf = (job: Job, bearing: number): PadGround => {
  const { soil } = job.floor.ground;
  const named = soil.known ? soilClass[soil.value] : undefined;
  return {
    bearing,
    sliding: presumptiveSoils[named ?? "clay or silt"].sliding,
    overturningFactor: 1.5,
    slidingFactor: 1.5,
  };
};

/** The statics of pads that nothing around them helps: of each check the worst case and pad. */
export const aloneChecks = (job: Job, design: PadDesign, parts: readonly PadPart[], setting: PadSetting): Check[] => {
  const { inputs } = setting;
  const worst = new Set(["left", "right"].flatMap((side) => governing(setting.counted.filter((c) => c.side === side))));
  const counted = setting.counted.filter(({ caseId }) => worst.has(caseId));
  const ground = groundOf(job, inputs.bearing.value);
  const found = new Map<string, Check>();
  const keep = (check: Check, where: string): void => {
    const before = found.get(check.id);
    if (!before || check.ratio > before.ratio)
      found.set(check.id, { ...check, governs: [where, check.governs].filter(Boolean).join(": ") });
  };
  for (const part of parts)
    for (const cases of byCase(counted, part)) {
      const where = `${part.name}, ${cases[0]!.caseName}`;
      const pad = { outline: part.outline, thickness: design.depth, unitWeight: UNIT_WEIGHT };
      const actions = cases.map(({ base, reaction }) => ({ at: base.centre, reaction }));
      for (const check of separatePadChecks(pad, actions, ground)) keep(check, where);
      for (const check of cases.length === 1 ? onePad(part, design, cases[0]!) : stripOf(part, design, cases, setting))
        keep(check, where);
    }
  return [...found.values()];
};

/** The bases on this part, case by case. */
const byCase = (counted: readonly BaseCase[], part: PadPart): BaseCase[][] => {
  const own = counted.filter(
    ({ side }) => part.name === "lift strip" || part.name === "lift pad" || part.name.startsWith(side),
  );
  return [...new Set(own.map(({ caseId }) => caseId))].map((id) => own.filter(({ caseId }) => caseId === id));
};

const onePad = (part: PadPart, design: PadDesign, { base, reaction }: BaseCase): readonly Check[] => {
  const pad = { outline: part.outline, thickness: design.depth, unitWeight: UNIT_WEIGHT };
  const { N, at } = padResultant(pad, [{ at: base.centre, reaction }]);
  const pressure = groundPressure(part.outline, N, at);
  if (isUnable(pressure)) return [];
  return padSectionChecks(part.outline, pressure, padSection(design), UNIT_WEIGHT * design.depth, boxOf(base.outline));
};

/** A strip under both columns as a beam on springs along the wall; where it would lift off, the plate alone judges it. */
const stripOf = (part: PadPart, design: PadDesign, cases: readonly BaseCase[], { inputs, E }: PadSetting): Check[] => {
  const box = boxOf(part.outline);
  const alongX = box.x1 - box.x0 >= box.y1 - box.y0;
  const [start, length, width] = alongX
    ? [box.x0, box.x1 - box.x0, box.y1 - box.y0]
    : [box.y0, box.y1 - box.y0, box.x1 - box.x0];
  const loads = cases.map(({ base: { centre }, reaction: { P, Mx, My } }) => ({
    at: (alongX ? centre.x : centre.y) - start,
    P,
    M: alongX ? My : Mx,
  }));
  const beam = stripBending({ length, width, thickness: design.depth, E, k: inputs.k, unitWeight: UNIT_WEIGHT }, loads);
  if (isUnable(beam)) return [];
  const check = (id: string, title: string, term: Term, capacity: Term): Check => ({
    id,
    title,
    demand: { ...term, symbol: `1.6 ${term.symbol}`, value: LOAD_FACTOR * term.value },
    capacity,
    ratio: (LOAD_FACTOR * term.value) / capacity.value,
    clause: capacity.clause ?? "",
  });
  const [bottom, top] = [sectionStrength(padSection(design), width), sectionStrength(padSection(design, "top"), width)];
  const sag = check("pad-bending", "Bending of the strip", beam.sagging, bottom.M);
  const hog = check("pad-bending", "Bending of the strip, top", beam.hogging, top.M);
  return [sag.ratio >= hog.ratio ? sag : hog, check("pad-shear", "Shear of the strip", beam.shear, bottom.V)];
};
