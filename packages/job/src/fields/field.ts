import type { Dimension } from "@floorworthy/engine/quantities";
import type { Node } from "yaml";
import type { Place } from "../reading/place.ts";

/** What may be written at a field: data from which the schema and the table of keys are made. */
export type Shape =
  | {
      readonly kind: "quantity";
      readonly dimension: Dimension;
      readonly sign: Sign;
      readonly may: "be-unknown" | "not-be-unknown";
    }
  | { readonly kind: "choice"; readonly words: Words; readonly may: "be-unknown" | "not-be-unknown" }
  | { readonly kind: "price"; readonly by: PricedBy }
  | { readonly kind: "text"; readonly most: number }
  | { readonly kind: "date" }
  | { readonly kind: "version" }
  | { readonly kind: "point"; readonly axes: readonly [string, string] }
  | { readonly kind: "list"; readonly of: AnyField; readonly least: number; readonly most: number }
  | { readonly kind: "group"; readonly fields: Readonly<Record<string, AnyField>> }
  | { readonly kind: "either"; readonly of: readonly AnyField[] };

/** What a price is counted by: a measure with its unit, or the piece. */
export type PricedBy = Extract<Dimension, "length" | "area" | "volume" | "force" | "time"> | "each";

export type Sign = "any" | "not-negative" | "positive";

/** Each word of a list with what it means. */
export type Words = Readonly<Record<string, string>>;

/**
 * One field of the form: what may be written, what it means, and how it is read. `read` never throws; a mistake is
 * reported at its place and `absent` takes the value's seat.
 */
export interface Field<T> {
  readonly shape: Shape;
  readonly doc: string;
  readonly need: "required" | "optional";
  readonly read: (node: Node, place: Place) => T;
  /** the value when nothing is written */
  readonly absent: (place: Place) => T;
}

// biome-ignore lint/suspicious/noExplicitAny: a list of fields of any value; each is typed where it is declared
export type AnyField = Field<any>;

/** The fields of a group of values T, one for each of its keys. */
export type Fields<T> = { readonly [K in keyof Required<T>]: Field<T[K]> };

export const required = <T>(field: Field<T>): Field<T> => ({ ...field, need: "required" });
