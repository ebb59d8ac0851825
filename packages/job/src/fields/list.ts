import { isSeq, type Node } from "yaml";
import { at, type Place, report } from "../reading/place.ts";
import type { Field } from "./field.ts";
import { isEmpty } from "./scalar-text.ts";

interface ListOptions {
  readonly least?: number;
  readonly most?: number;
}

/** Items in order. More than `most` are refused before any is read. */
export const list = <T>(doc: string, item: Field<T>, options: ListOptions = {}): Field<readonly T[]> => {
  const { least = 0, most = 200 } = options;
  return {
    shape: { kind: "list", of: item, least, most },
    doc,
    need: "optional",
    absent: () => [],
    read: (node: Node, place: Place) => {
      if (!isSeq(node)) {
        report(place, node, "not-a-list", {
          message: "A list was expected here.",
          hint: "Begin each item on its own line with a dash and a space.",
        });
        return [];
      }
      if (node.items.length > most) {
        report(place, node, "too-many-items", {
          got: String(node.items.length),
          message: `The list has ${node.items.length} items; the form takes up to ${most}.`,
          hint: "Keep the ones that matter for this lift.",
        });
        return [];
      }
      return node.items.map((value, index) => {
        const there = at(place, index);
        if (!isEmpty(value as Node | null)) return item.read(value as Node, { ...there, around: value as Node });
        report(there, (value as Node | null) ?? node, "empty-item", {
          message: "An item of the list is empty.",
          hint: "Write it or take its dash away.",
        });
        return item.absent(there);
      });
    },
  };
};
