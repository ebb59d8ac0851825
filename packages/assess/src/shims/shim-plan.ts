import { type Point, polygonArea, polygonCentroid } from "@floorworthy/engine/geometry";
import { capital, fromBase, type Term } from "@floorworthy/engine/quantities";
import type { BaseCorner, Job } from "@floorworthy/job";
import type { PlacedBase } from "../assessment.ts";
import { basisWords } from "../facts/known.ts";
import { term } from "../facts/print.ts";
import { placedBases } from "../layout.ts";
import { lengthWords } from "../setout/length-words.ts";
import { cornerAt, cornerNames } from "./corners.ts";
import { type FloorPlane, heightAt, type LevelPoint, planeThrough } from "./floor-plane.ts";
import { practice, stepOf } from "./practice.ts";
import { type Stack, stackFor } from "./stack.ts";

/** How each base is brought level, from the floor's levels at its corners. */
export interface ShimPlan {
  readonly bases: readonly BaseShims[];
  /** highest stack without grout */
  readonly limit: Term;
  /** how much higher the higher base's plate ends up than the other's; undefined where a level is missing */
  readonly between: Term | undefined;
  readonly advice: readonly string[];
}

export type Bedding = "as-it-stands" | "shims" | "grout" | "put-the-floor-right" | "not-measured";

/** A gap between floor and level plate, and what fills it. */
export interface ShimPlace {
  readonly id: string;
  readonly at: Point;
  readonly gap: Term;
  readonly stack: Stack;
}

export interface BaseShims {
  readonly side: string;
  readonly bedding: Bedding;
  readonly missing: readonly BaseCorner[];
  readonly corners: readonly ShimPlace[];
  /** full support beside every anchor: its own stack */
  readonly anchors: readonly ShimPlace[];
  readonly highest: Term | undefined;
  readonly grout: Term | undefined;
  /** how far the column's head stands off plumb on the bare floor, and on the shims */
  readonly headBefore: Term | undefined;
  readonly headAfter: Term | undefined;
}

/** Each base is levelled to its own highest corner: nothing is chiselled. Corners that nobody measured are named, not guessed. */
export const shimPlan = (job: Job): ShimPlan => {
  const given = job.lift.anchors.shimLimit;
  const limit = term(
    "s_max",
    "highest stack of shims without grout",
    given.known ? given.low : practice.stackLimit,
    "length",
    job.units,
    { basis: given.known ? basisWords(given.basis) : "common practice, no source" },
  );
  const limitMm = given.known ? given.low : practice.stackLimit;
  const made = placedBases(job).map((base) => baseShims(job, base, limitMm));
  const between = betweenOf(job, made);
  return { bases: made.map(({ shims }) => shims), limit, between, advice: adviceOf(job, made, limitMm, between) };
};

interface Made {
  readonly shims: BaseShims;
  /** level to which the plate's underside comes, mm */
  readonly target: number | undefined;
  readonly highest: number;
}

const baseShims = (job: Job, base: PlacedBase, limit: number): Made => {
  const { units } = job;
  const levels = cornerNames.flatMap((corner) => {
    const level = job.installation?.levels.findLast((l) => l.base === base.side && l.corner === corner)?.level;
    return level?.known ? [{ corner, at: cornerAt(base, corner), z: level.value, basis: level.basis }] : [];
  });
  const missing = cornerNames.filter((corner) => !levels.some((l) => l.corner === corner));
  const plane = planeThrough(levels);
  if (!plane || missing.length > 0)
    return {
      shims: {
        side: base.side,
        bedding: "not-measured",
        missing,
        corners: [],
        anchors: [],
        highest: undefined,
        grout: undefined,
        headBefore: plane && headOff(job, plane, "on the bare floor"),
        headAfter: undefined,
      },
      target: undefined,
      highest: 0,
    };
  const target = Math.max(...levels.map((l) => l.z));
  const place = (id: string, at: Point, z: number, from: string): ShimPlace => ({
    id,
    at,
    gap: term("g", `gap at ${id}`, target - z, "length", units, {
      formula: "highest corner − floor there",
      worked: `${shownMm(target)} − ${shownMm(z)} = ${shownMm(target - z)} mm`,
      basis: from,
    }),
    stack: stackFor(target - z, units),
  });
  const corners = levels.map(({ corner, at, z, basis }) => place(corner, at, z, basisWords(basis)));
  const anchors = base.anchors.map(({ id, at }) =>
    place(id, at, Math.min(target, heightAt(plane, at)), "plane through the four corners"),
  );
  const highest = Math.max(...[...corners, ...anchors].map((p) => p.stack.height));
  const shimmed: LevelPoint[] = corners.map(({ at, stack }, i) => ({ at, z: levels[i]!.z + stack.height }));
  const after = planeThrough(shimmed)!;
  const bedding: Bedding =
    highest === 0
      ? "as-it-stands"
      : highest <= limit * (1 + 1e-9)
        ? "shims"
        : highest <= practice.groutLimit
          ? "grout"
          : "put-the-floor-right";
  return {
    shims: {
      side: base.side,
      bedding,
      missing,
      corners,
      anchors,
      highest: term("s", `highest stack under the ${base.side} base`, highest, "length", units),
      grout: bedding === "grout" ? groutOf(job, base, plane, target) : undefined,
      headBefore: headOff(job, plane, "on the bare floor"),
      headAfter: headOff(job, after, "on these shims"),
    },
    target,
    highest,
  };
};

const shownMm = (mm: number): string => String(Math.round(mm * 100) / 100);

/** A plane's volume over an area is the height over its centroid times the area. */
const groutOf = (job: Job, base: PlacedBase, plane: FloorPlane, target: number): Term => {
  const area = polygonArea(base.outline);
  const centre = polygonCentroid(base.outline) ?? base.centre;
  const net = area * Math.max(0, target - heightAt(plane, centre));
  const unit = job.units === "si" ? "m³" : "ft³";
  return {
    symbol: "V",
    words: `non-shrink grout to mix for the ${base.side} base`,
    value: fromBase(net * (1 + practice.groutWaste), unit),
    unit,
    formula: "plate area × gap at its middle × 1.1",
    worked: `${Math.round(area)} mm² × ${shownMm(target - heightAt(plane, centre))} mm × 1.1`,
    clause: "10 % over: common practice, no source",
  };
};

const headOff = (job: Job, { sx, sy }: FloorPlane, words: string): Term | undefined => {
  const { tieHeight, overallHeight } = job.lift;
  const height = tieHeight.known ? tieHeight : overallHeight;
  if (!height.known) return undefined;
  const slope = Math.hypot(sx, sy);
  return term("Δ", `column head off plumb ${words}`, slope * height.value, "length", job.units, {
    formula: "slope of the base × height",
    worked: `${slope.toFixed(5)} × ${Math.round(height.value)} mm`,
    basis: `height ${basisWords(height.basis)}`,
  });
};

const betweenOf = (job: Job, made: readonly Made[]): Term | undefined => {
  const [a, b] = made.map((m) => m.target);
  if (a === undefined || b === undefined) return undefined;
  return term("d", "one base stands higher than the other by", Math.abs(a - b), "length", job.units, {
    formula: "difference of the highest corners",
  });
};

const adviceOf = (job: Job, made: readonly Made[], limit: number, between: Term | undefined): string[] => {
  const of = (bedding: Bedding): string[] => made.filter((m) => m.shims.bedding === bedding).map((m) => m.shims.side);
  const sides = (list: readonly string[]): string => `${list.join(" and ")} base${list.length > 1 ? "s" : ""}`;
  const [left, right] = made.map((m) => m.target);
  const apart = left !== undefined && right !== undefined ? Math.abs(left - right) : 0;
  const missing = made.filter((m) => m.shims.bedding === "not-measured");
  return [
    ...missing.map(
      ({ shims }) => `Level the floor at the ${shims.missing.join(", ")} corner of the ${shims.side} base first.`,
    ),
    ...(of("put-the-floor-right").length
      ? [
          `${sides(of("put-the-floor-right"))}: the floor falls too far under the plate. No stack and no bed of grout: have the floor put right.`,
        ]
      : []),
    ...(of("grout").length
      ? [
          `${sides(of("grout"))}: beyond the limit for shims alone. Ask the maker whether grout is allowed, then bed the whole plate in non-shrink grout; the stacks only carry it until the grout is hard.`,
        ]
      : []),
    ...(made.some((m) => m.highest > 0)
      ? [
          "Shims lie beside every anchor and under the corners, full width under the plate: no plate bridges over air at an anchor.",
          "Few thick shims, the thickest at the bottom; steel, never wood, washers or folded sheet.",
        ]
      : []),
    ...(between && apart > practice.between
      ? [
          `The bases differ by more than is usual (${lengthWords(practice.between, job.units)}; common practice, no source): raise the lower one, or ask the maker how much the carriages can make up.`,
        ]
      : []),
    `Rounded to stock of ${lengthWords(stepOf(job.units), job.units)}; check with a level on the plate both ways, and the column with a plumb line, before the nuts are torqued. Limit without grout ${lengthWords(limit, job.units)}.`,
  ].map(capital);
};
