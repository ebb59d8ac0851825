import { modulusOfRupture } from "@floorworthy/engine/codes/aci318-19";
import { polygonArea } from "@floorworthy/engine/geometry";
import { coldJointCheck } from "@floorworthy/engine/pads";
import type { FloorResult, StressPeak } from "@floorworthy/engine/plates";
import { type Check, fromBase, isUnable, toBase, type Unable } from "@floorworthy/engine/quantities";
import { overturningCollapse, stiffnessRadius } from "@floorworthy/engine/slabs";
import type { Job } from "@floorworthy/job";
import type { MarginCheck } from "../assessment.ts";
import { keepWorst } from "../margin/anchors.ts";
import { type BaseCase, pullOf, pushOf } from "../margin/cases.ts";
import { NU } from "../margin/practice.ts";
import { solvedPanels } from "../margin/slab.ts";
import { plateChecks } from "../margin/under-the-plate.ts";
import { aloneChecks } from "./alone.ts";
import { coldJointAsked } from "./cold-joint-asked.ts";
import type { PadDesign } from "./design.ts";
import { solveDowelled } from "./dowelled-floor.ts";
import type { OldSlab } from "./old-slab.ts";
import type { PadPart } from "./outlines.ts";
import { anchorMarginFor, type PadMemory, type PadSetting, type SolvedPad, settingFor, settingKey } from "./setting.ts";
import { padMoments } from "./steel.ts";
import { withDesign } from "./with-design.ts";

/** What a design comes to: capacity over demand, worst counted case and worst end of every fact. */
export interface PadFigures {
  /** modulus of rupture over stress, and whether the thick or the thin concrete cracks first */
  readonly crack: number;
  readonly crackIn: "pad" | "slab";
  /** by yield lines, lower bound */
  readonly collapse: number;
  readonly anchors: number;
  readonly anchorsGovern: string;
  readonly ground: number;
  /** N/mm² on the ground, own weight included, and its share of the allowable */
  readonly pressure: number;
  /** largest ratio of the other checks that count: bearing, punching, cold joint, statics, dowels */
  readonly others: number;
  readonly othersGovern: string;
}

export interface Evaluated {
  readonly figures: PadFigures;
  readonly checks: readonly Check[];
}

/** One design in one job by the whole mechanics; some tens of milliseconds. */
export const evaluatePad = (
  job: Job,
  design: PadDesign,
  parts: readonly PadPart[],
  old: OldSlab,
  memory: PadMemory,
): Evaluated | Unable => {
  const changed = withDesign(job, design, parts);
  const setting = settingFor(changed, memory, settingKey(design));
  if (isUnable(setting)) return setting;
  const { inputs, counted, E } = setting;
  const plates = new Map<string, MarginCheck>();
  for (const c of counted)
    for (const check of plateChecks(changed, inputs, c, E, "limit"))
      if (check.weight === "limit") keepWorst(plates, check);
  const alone = design.join === "separate" || design.join === "undercut";
  const cold = design.join === "cast-with" ? [] : coldJoints(job, parts, counted, setting);
  const statics = alone ? aloneChecks(job, design, parts, setting) : [];
  const floor = solvedPad(job, changed, design, parts, old, setting, memory);
  if (isUnable(floor)) return floor;
  const anchors = anchorMarginFor(changed, setting, memory, anchorKey(design, parts, counted, setting));
  const counting = [...plates.values(), ...cold, ...floor.checks, ...statics.filter(counts)];
  const worst = counting.reduce<Check | undefined>((a, b) => (a && a.ratio >= b.ratio ? a : b), undefined);
  return {
    figures: {
      crack: floor.crack,
      crackIn: floor.crackIn,
      collapse: collapseMargin(design, setting),
      anchors: anchors.margin,
      anchorsGovern: anchors.governs,
      ground: inputs.bearing.value / floor.pressure,
      pressure: floor.pressure,
      others: worst?.ratio ?? 0,
      othersGovern: worst?.title ?? "",
    },
    checks: [...cold, ...statics, ...floor.checks],
  };
};

/** Bending and shear as a footing by ACI 318 stand beside: for plain concrete on the ground the first crack is the judge. */
export const counts = ({ id }: Check): boolean => id !== "pad-bending" && id !== "pad-shear";

/** What no plate has to be solved for. "deeper": the plan cannot mend it; "larger": more plan or depth can; "stronger": depth, steel or fibre. */
export const shortBeforeSolving = (
  job: Job,
  design: PadDesign,
  parts: readonly PadPart[],
  limits: { readonly collapse: number },
  memory: PadMemory,
): "deeper" | "larger" | "stronger" | undefined => {
  const changed = withDesign(job, design, parts);
  const setting = settingFor(changed, memory, settingKey(design));
  if (isUnable(setting)) return undefined;
  const { inputs, counted, E } = setting;
  for (const c of counted) {
    const over = plateChecks(changed, inputs, c, E, "limit").filter(
      (check) => check.weight === "limit" && check.ratio > 1 + 1e-9,
    );
    if (over.some(({ id }) => id === "bearing")) return "deeper";
    if (over.length > 0) return "larger";
  }
  if (design.join === "separate" || design.join === "undercut")
    if (aloneChecks(job, design, parts, setting).some((check) => counts(check) && check.ratio > 1 + 1e-9))
      return "larger";
  if (design.join !== "cast-with" && coldJoints(job, parts, counted, setting).some(({ ratio }) => ratio > 1 + 1e-9))
    return "larger";
  return collapseMargin(design, setting) < limits.collapse ? "stronger" : undefined;
};

const solvedPad = (
  job: Job,
  changed: Job,
  design: PadDesign,
  parts: readonly PadPart[],
  old: OldSlab,
  setting: PadSetting,
  memory: PadMemory,
): SolvedPad | Unable => {
  const key = `${settingKey(design)}|${design.join}|${JSON.stringify(design.size)}`;
  const known = memory.plates.get(key);
  if (known) return known;
  const floor = floorResults(job, changed, design, parts, old, setting);
  const made = isUnable(floor)
    ? floor
    : {
        ...firstCrack(floor.results, setting.fr, old, design),
        pressure: Math.max(...floor.results.map(({ governing }) => governing.groundPressure.value)),
        checks: floor.checks,
      };
  memory.plates.set(key, made);
  return made;
};

const floorResults = (
  job: Job,
  changed: Job,
  design: PadDesign,
  parts: readonly PadPart[],
  old: OldSlab,
  setting: PadSetting,
): { results: readonly FloorResult[]; checks: readonly Check[] } | Unable => {
  if (design.join === "dowelled")
    return solveDowelled(design, parts, setting, old.thickness, old.strength, job.bay.outline);
  const results: FloorResult[] = [];
  for (const panel of solvedPanels(changed, setting.inputs, setting.counted, setting.E)) {
    if (isUnable(panel.results)) return { ...panel.results, place: panel.panel.name };
    results.push(...panel.results);
  }
  return { results, checks: [] };
};

/** The old slab keeps its own strength; concrete cast with the pad has the pad's. */
const firstCrack = (
  results: readonly FloorResult[],
  fr: number,
  old: OldSlab,
  design: PadDesign,
): Pick<PadFigures, "crack" | "crackIn"> => {
  const oldFr = toBase(modulusOfRupture(fromBase(old.strength, "psi")), "psi");
  let worst: Pick<PadFigures, "crack" | "crackIn"> = { crack: Number.POSITIVE_INFINITY, crackIn: "pad" };
  for (const { governing: g } of results)
    for (const peak of [g.stressBottomAveraged, g.stressTopAveraged, g.thinSideOfPadEdge, g.thickSideOfPadEdge] as (
      | StressPeak
      | undefined
    )[]) {
      if (!peak || !(peak.value > 0)) continue;
      const crackIn = peak.thickness < design.depth - 1e-6 ? "slab" : "pad";
      const crack = (crackIn === "slab" && design.join === "dowelled" ? oldFr : fr) / peak.value;
      if (crack < worst.crack) worst = { crack, crackIn };
    }
  return worst;
};

const collapseMargin = (design: PadDesign, { counted, inputs, E, fr }: PadSetting): number => {
  const moments = padMoments(design, fr);
  const l = stiffnessRadius({ E, nu: NU, h: design.depth, k: inputs.k });
  const ratios = counted.map((c) => {
    const pressed = c.rest.likely.contactZone.reduce((s, zone) => s + polygonArea(zone), 0);
    if (pressed === 0) return 0;
    return overturningCollapse(
      { force: pushOf(c), radius: Math.sqrt(pressed / Math.PI), place: "interior" },
      { force: pullOf(c), radius: Math.sqrt(polygonArea(c.base.outline) / 4 / Math.PI), place: "interior" },
      moments,
      l,
      "lower",
    ).ratio;
  });
  return 1 / Math.max(...ratios);
};

const coldJoints = (
  job: Job,
  parts: readonly PadPart[],
  counted: readonly BaseCase[],
  { inputs }: PadSetting,
): Check[] => {
  const checks = parts.flatMap((part) => {
    const anchors = anchorsOn(part, counted);
    return anchors.length === 0 ? [] : [coldJointCheck(part.outline, anchors, inputs.product.hef, coldJointAsked(job))];
  });
  return checks.length === 0 ? [] : [checks.reduce((a, b) => (b.ratio > a.ratio ? b : a))];
};

const anchorsOn = ({ name }: PadPart, counted: readonly BaseCase[]) =>
  [...new Map(counted.map((c) => [c.side, c.base])).values()]
    .filter(({ side }) => !name.endsWith("pad") || name === "lift pad" || name.startsWith(side))
    .flatMap(({ anchors }) => anchors.map(({ at }) => at));

/** Beyond six embedments no edge changes an anchor: the answer then depends on the depth alone. */
const anchorKey = (
  design: PadDesign,
  parts: readonly PadPart[],
  counted: readonly BaseCase[],
  { inputs }: PadSetting,
): string => {
  const key = settingKey(design);
  if (design.join === "cast-with") return key;
  const near = parts.flatMap((part) => anchorsOn(part, counted).flatMap((p) => edgeDistances(p, part)));
  const least = Math.min(...near);
  const reach = 6 * inputs.product.hef;
  return least >= reach ? key : `${key}|${near.map((d) => Math.round(Math.min(d, reach))).join(",")}`;
};

const edgeDistances = (p: { x: number; y: number }, { outline }: PadPart): number[] =>
  outline.map((a, i) => {
    const b = outline[(i + 1) % outline.length]!;
    return Math.abs((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x)) / Math.hypot(b.x - a.x, b.y - a.y);
  });
