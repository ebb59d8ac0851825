/** A voice: how one manual says things. Sentences hold {field} where a figure or word is set. */
import type { FieldName } from "@floorworthy/manuals";

export interface Voice {
  /** sentences about what holds for every model, by heading */
  readonly sections: readonly { readonly heading: string; readonly sentences: readonly string[] }[];
  /** sentences about one model; {model} is its name */
  readonly perModel: readonly string[];
  readonly labels: Partial<Readonly<Record<FieldName, string>>>;
  readonly words: Readonly<Record<string, string>>;
  /** text with figures that are none of the floor's business */
  readonly noise: readonly string[];
}
