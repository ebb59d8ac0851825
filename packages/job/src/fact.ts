/** How a fact is known. `stated`: somebody said or wrote it, nobody showed it. */
export type Basis =
  | { readonly kind: "measured"; readonly by?: string; readonly on?: string; readonly how?: string }
  | {
      readonly kind: "documented";
      readonly document?: string;
      readonly page?: string;
      /** the line as printed there */
      readonly line?: string;
      /** the picture of that line: a file's name, or the fingerprint of an attachment */
      readonly picture?: string;
    }
  | { readonly kind: "assumed"; readonly why: string }
  | { readonly kind: "stated" };

/** A number in base units with the range it may lie in, how it is known and how it was written. `low ≤ value ≤ high`. */
export interface KnownQuantity {
  readonly known: true;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly basis: Basis;
  /** as the person wrote it, e.g. "4 1/4 in" */
  readonly written: string;
}

/** A word out of a list, with how it is known. */
export interface KnownChoice<T> {
  readonly known: true;
  readonly value: T;
  readonly basis: Basis;
}

/** Nobody knows, or nobody said. Legal everywhere. */
export interface Unknown {
  readonly known: false;
  /** why it is not known, when the person said so */
  readonly note?: string;
}

/** A number that may be unknown. The dimension is stated where the field is declared. */
export type Quantity = KnownQuantity | Unknown;

/** A choice that may be unknown. */
export type Choice<T extends string> = KnownChoice<T> | Unknown;

export const unknown: Unknown = { known: false };
