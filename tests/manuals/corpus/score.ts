/** How much of a manual was found, and how much of what was marked sure is true. */
import type { Candidate, FieldName } from "@floorworthy/manuals";
import type { InventedManual } from "./story.ts";

export interface Tally {
  wanted: number;
  found: number;
  sure: number;
  sureRight: number;
}

export interface Miss {
  readonly field: FieldName;
  readonly model: string;
  readonly what: string;
}

export const emptyTally = (): Tally => ({ wanted: 0, found: 0, sure: 0, sureRight: 0 });

/** Units printed rounded (mm beside inches) may differ by this much. */
const SAME = 0.006;

export const sameValue = (a: number | string, b: number | string): boolean =>
  typeof a === "number" && typeof b === "number"
    ? Math.abs(a - b) <= SAME * Math.max(Math.abs(a), Math.abs(b))
    : a === b;

export const score = (
  manual: InventedManual,
  candidates: readonly Candidate[],
): {
  readonly byField: ReadonlyMap<FieldName, Tally>;
  readonly missed: readonly Miss[];
  readonly wrong: readonly Candidate[];
} => {
  const byField = new Map<FieldName, Tally>();
  const tally = (field: FieldName): Tally => {
    const held = byField.get(field) ?? emptyTally();
    byField.set(field, held);
    return held;
  };
  const missed: Miss[] = [];
  const wrong: Candidate[] = [];
  const models = manual.lift.models.map(({ name }) => name);
  const truthOf = (model: string, field: FieldName) =>
    manual.truth.filter((t) => t.field === field && (t.model ?? model) === model).map(({ value }) => value);
  for (const model of models)
    for (const field of new Set(manual.truth.map((t) => t.field)))
      for (const value of new Set(truthOf(model, field))) {
        const hit = candidates.some(
          (c) => c.field === field && (c.model ?? model) === model && sameValue(c.found.value, value),
        );
        tally(field).wanted += 1;
        if (hit) tally(field).found += 1;
        else missed.push({ field, model, what: String(value) });
      }
  for (const candidate of candidates.filter(({ confidence }) => confidence === "sure")) {
    const overridden = (model: string) =>
      candidate.model === undefined && candidates.some((c) => c.field === candidate.field && c.model === model);
    const holds = (candidate.model === undefined ? models.filter((m) => !overridden(m)) : [candidate.model]).every(
      (model) => truthOf(model, candidate.field).some((value) => sameValue(value, candidate.found.value)),
    );
    tally(candidate.field).sure += 1;
    if (holds) tally(candidate.field).sureRight += 1;
    else wrong.push(candidate);
  }
  return { byField, missed, wrong };
};
