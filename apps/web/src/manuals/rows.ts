import type { Candidate, FieldName, ManualReading } from "@floorworthy/manuals";
import { fieldNames } from "@floorworthy/manuals";

/** One value of the lift sheet with everything the manual says of it, what is proposed first. */
export interface ManualRow {
  readonly field: FieldName;
  readonly found: readonly Candidate[];
}

type Read = Extract<ManualReading, { readonly ok: true }>;

const sureness = { sure: 0, likely: 1, doubtful: 2 } as const;

/** Rows in the order of the lift sheet for one model: its own values before those for every model. */
export const rowsFor = ({ candidates }: Pick<Read, "candidates">, model: string | undefined): readonly ManualRow[] =>
  fieldNames.map((field) => ({
    field,
    found: candidates
      .filter((each) => each.field === field && (each.model === undefined || each.model === model))
      .toSorted(
        (a, b) =>
          Number(b.model === model && model !== undefined) - Number(a.model === model && model !== undefined) ||
          sureness[a.confidence] - sureness[b.confidence] ||
          demanding(b) - demanding(a),
      ),
  }));

/** Of two values that disagree the more demanding is proposed. */
const demanding = ({ found }: Candidate): number => (found.kind === "number" ? found.value : 0);
