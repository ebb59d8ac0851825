import type { Node } from "yaml";
import type { Basis } from "../fact.ts";
import { at, type Place, report } from "../reading/place.ts";
import { type Entry, entriesOf } from "./entries.ts";
import type { AnyField, Field, Fields } from "./field.ts";
import { isEmpty } from "./scalar-text.ts";

interface GroupOptions {
  /** how facts inside are known that do not say; told from the group's own written entries */
  readonly basis?: (entries: ReadonlyMap<string, Entry>, outer: Basis) => Basis;
}

/** Reads every field of a group in the order declared. */
export const readFields = <T>(fields: Fields<T>, entries: ReadonlyMap<string, Entry>, place: Place): T => {
  const values = Object.entries<AnyField>(fields).map(([key, field]) => {
    const entry = entries.get(key);
    const there = at(place, key);
    if (entry && !isEmpty(entry.value)) return [key, field.read(entry.value!, { ...there, around: entry.key })];
    if (field.need === "required")
      report(there, entry?.key, "missing-key", {
        message: `"${key}" is missing.`,
        hint: `Needed: ${field.doc}.`,
      });
    return [key, field.absent(there)];
  });
  return Object.fromEntries(values) as T;
};

/** Keys with values. `what` completes "… is not a key of …", e.g. "a joint". */
export const group = <T>(what: string, doc: string, fields: Fields<T>, options: GroupOptions = {}): Field<T> => ({
  shape: { kind: "group", fields: fields as Readonly<Record<string, AnyField>> },
  doc,
  need: "optional",
  read: (node: Node, place: Place) => {
    const entries = entriesOf(node, place, Object.keys(fields), what);
    if (!entries) return absentFields(fields, place);
    const basis = options.basis?.(entries, place.basis) ?? place.basis;
    return readFields(fields, entries, { ...place, basis, around: node });
  },
  absent: (place) => absentFields(fields, place),
});

const absentFields = <T>(fields: Fields<T>, place: Place): T =>
  Object.fromEntries(Object.entries<AnyField>(fields).map(([key, field]) => [key, field.absent(at(place, key))])) as T;

/** A group that is left out altogether when it is not written. */
export const optionalGroup = <T>(field: Field<T>): Field<T | undefined> => ({ ...field, absent: () => undefined });
