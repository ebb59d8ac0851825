import { printQuantity } from "@floorworthy/engine/quantities";
import type { Candidate, Confidence, Remark } from "./candidate.ts";

/** Values that differ by less are one value in two units. */
const ROUNDING = 0.02;

export const saysTheSame = (a: Candidate, b: Candidate): boolean => {
  if (a.found.kind === "word" || b.found.kind === "word") return a.found.value === b.found.value;
  const slack = ROUNDING * Math.max(Math.abs(a.found.high), Math.abs(b.found.high));
  return a.found.low <= b.found.high + slack && b.found.low <= a.found.high + slack;
};

/** One holds for a model and the other for all, and no note says that the model is an exception. */
const meet = (a: Candidate, b: Candidate, isNote: (id: string) => boolean): boolean =>
  a.model === b.model || ((a.model === undefined || b.model === undefined) && !isNote(a.id) && !isNote(b.id));

/** Values for the same field and model that say something else are shown side by side, and none of them stays sure. */
export const withConflicts = (
  candidates: readonly Candidate[],
  isNote: (id: string) => boolean,
): readonly Candidate[] =>
  candidates.map((candidate) => {
    const against = candidates.filter(
      (other) =>
        other.field === candidate.field &&
        other.field !== "power" &&
        meet(candidate, other, isNote) &&
        !saysTheSame(candidate, other),
    );
    if (against.length === 0) return candidate;
    const pages = [...new Set(against.map(({ written, evidence }) => `page ${evidence.page} says ${written}`))];
    return {
      ...candidate,
      conflicts: against.map(({ id }) => id),
      confidence: candidate.confidence === "sure" ? ("likely" as Confidence) : candidate.confidence,
      reasons: [...candidate.reasons, ...pages],
    };
  });

/** A note that speaks of one model changes what the table says for it. */
export const withNotes = (candidates: readonly Candidate[], isNote: (id: string) => boolean): readonly Candidate[] =>
  candidates.map((candidate) => {
    const note = candidates.find(
      (other) =>
        isNote(other.id) &&
        !isNote(candidate.id) &&
        other.field === candidate.field &&
        other.model !== undefined &&
        other.model === candidate.model &&
        !saysTheSame(other, candidate),
    );
    if (!note) return candidate;
    const remark: Remark = {
      code: "changed-by-note",
      message: `A note on page ${note.evidence.page} changes this to ${note.written} for ${note.model}.`,
      hint: "Read both lines; the note is the later word.",
    };
    return { ...candidate, confidence: "doubtful", remarks: [...candidate.remarks, remark] };
  });

/** Concrete under an anchor's end: common practice, no source. */
const COVER = 19;

const numberOf = (c: Candidate | undefined): number | undefined =>
  c?.found.kind === "number" ? c.found.high : undefined;

const first = (
  candidates: readonly Candidate[],
  field: Candidate["field"],
  model: string | undefined,
): Candidate | undefined =>
  candidates.find((c) => c.field === field && c.model === model) ??
  candidates.find((c) => c.field === field && (c.model === undefined || model === undefined));

const doubt = (candidate: Candidate, remark: Remark): Candidate => ({
  ...candidate,
  confidence: "doubtful",
  remarks: [...candidate.remarks, remark],
});

const lengthText = (mm: number): string =>
  `${printQuantity(mm, "length", { system: "inch-pound" })} (${printQuantity(mm, "length", { system: "si" })})`;

/** A slab that the anchor itself would go through, or nearly. */
export const withThinSlabs = (candidates: readonly Candidate[]): readonly Candidate[] =>
  candidates.map((candidate) => {
    const embedment = numberOf(first(candidates, "anchors.product.nominalEmbedment", candidate.model));
    const thickness = numberOf(candidate);
    if (candidate.field !== "asks.thickness" || embedment === undefined || thickness === undefined) return candidate;
    if (thickness >= embedment + COVER - 0.5) return candidate;
    return doubt(candidate, {
      code: "thinner-than-anchor",
      message: `The anchor sits ${lengthText(embedment)} deep and wants concrete below its end; this slab leaves ${lengthText(Math.max(0, thickness - embedment))}.`,
      hint: "Ask the maker which of the two figures holds.",
    });
  });

/**
 * T = K F d with K = 0.2 (the usual nut factor; Shigley's Mechanical Engineering Design, from memory) and F the stress
 * below on about 0.78 of the shank's area: below the lower one a nut is not tight, above the upper one a bolt yields.
 */
const NUT_FACTOR = 0.2;
const STRESSES = [40, 500] as const;

export const withTorqueChecked = (candidates: readonly Candidate[]): readonly Candidate[] =>
  candidates.map((candidate) => {
    const d = numberOf(first(candidates, "anchors.product.diameter", candidate.model));
    const torque = numberOf(candidate);
    if (candidate.field !== "anchors.torque" || d === undefined || torque === undefined) return candidate;
    const area = 0.78 * (Math.PI / 4) * d * d;
    const [low, high] = STRESSES.map((stress) => NUT_FACTOR * d * stress * area) as [number, number];
    if (torque >= low && torque <= high) return candidate;
    const text = (t: number) => printQuantity(t, "moment", { system: "inch-pound", unit: "lb-ft", precision: 0 });
    return doubt(candidate, {
      code: "torque-outside-diameter",
      message: `A bolt of ${lengthText(d)} takes about ${text(low)} to ${text(high)}; this is ${text(torque)}.`,
      hint: "Look whether the unit is right, and ask the maker before a wrench is set.",
    });
  });
