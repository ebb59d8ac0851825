import { printQuantity, readQuantity } from "@floorworthy/engine/quantities";
import type { Candidate } from "../candidates/index.ts";

/** What a person said about a candidate after looking at its line. */
export type Decision =
  | { readonly kind: "accepted" }
  | { readonly kind: "rejected" }
  | { readonly kind: "changed"; readonly to: Candidate };

/**
 * The candidates after a person has looked: an accepted or changed one is sure and stands alone for its field and
 * model; a rejected one is gone. What nobody decided stays as it was.
 */
export const confirmed = (
  candidates: readonly Candidate[],
  decisions: ReadonlyMap<string, Decision>,
): readonly Candidate[] => {
  const chosen = candidates.flatMap((candidate): readonly Candidate[] => {
    const decision = decisions.get(candidate.id);
    if (decision?.kind !== "accepted" && decision?.kind !== "changed") return [];
    const taken = decision.kind === "changed" ? decision.to : candidate;
    return [{ ...taken, confidence: "sure", conflicts: [], remarks: [] }];
  });
  const open = candidates.filter(
    ({ id, field, model }) =>
      !decisions.has(id) && !chosen.some((other) => other.field === field && other.model === model),
  );
  const ids = new Set([...open, ...chosen].map(({ id }) => id));
  return [...open, ...chosen].map((candidate) => ({
    ...candidate,
    conflicts: candidate.conflicts.filter((id) => ids.has(id)),
  }));
};

export type Change =
  | { readonly ok: true; readonly candidate: Candidate }
  | { readonly ok: false; readonly message: string; readonly hint: string };

/** A candidate with the value a person reads in the line instead, in trade notation. */
export const changed = (candidate: Candidate, text: string): Change => {
  if (candidate.found.kind === "word") {
    const value = text.trim();
    return { ok: true, candidate: { ...candidate, found: { kind: "word", value }, written: value } };
  }
  const { dimension } = candidate.found;
  const read = readQuantity(text, dimension);
  if (!read.ok) return read;
  if (read.value <= 0 && dimension !== "number") {
    const zero = printQuantity(read.value, dimension, { system: "inch-pound" });
    return { ok: false, message: `"${text}" is ${zero}.`, hint: "Write a value above zero." };
  }
  const found = { kind: "number", dimension, value: read.value, low: read.value, high: read.value } as const;
  return { ok: true, candidate: { ...candidate, found, written: read.written } };
};
