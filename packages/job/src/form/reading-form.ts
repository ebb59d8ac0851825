import { isScalar } from "yaml";
import type { Basis } from "../fact.ts";
import type { Entry } from "../fields/entries.ts";
import { choice, group, pointOrNone, quantity, required, text, word } from "../fields/index.ts";
import type { ThicknessReading } from "../floor.ts";

/** A hole, core or signal is measured; a drawing is a document. */
const methodBasis = (entries: ReadonlyMap<string, Entry>): Basis => {
  const node = entries.get("method")?.value;
  const method = isScalar(node) ? String(node.value) : "drill";
  return method === "drawing" ? { kind: "documented", document: "drawing" } : { kind: "measured", how: method };
};

export const readingForm = group<ThicknessReading>(
  "a thickness reading",
  "one look at how thick the slab is at one place",
  {
    at: pointOrNone("where, in the plan"),
    near: word(
      { left: "at the left base", right: "at the right base", middle: "between them", edge: "at an edge of the slab" },
      "where, when only that is known",
      undefined,
    ),
    thickness: required(
      quantity("length", "the thickness read; after a drilled depth that stayed in concrete, that depth", {
        usual: [25, 1000],
      }),
    ),
    method: word(
      {
        drill: "a hole drilled through and its depth hooked",
        core: "a core",
        "impact-echo": "impact-echo",
        radar: "ground radar",
        drawing: "read from a drawing",
        "edge-look": "seen at an edge",
      },
      "how it was read",
      "drill",
    ),
    end: word(
      {
        through: "the underside was felt",
        "still-concrete": "the drill stopped in concrete: at least this thick",
        dropped: "the bit dropped before the mark",
      },
      "how the hole ended",
      "through",
    ),
    under: choice(
      {
        gravel: "gravel or stone",
        sand: "sand",
        clay: "clay",
        soil: "soil",
        void: "a hollow",
        wet: "water or mud",
        foam: "foam board",
        "vapour-sheet": "plastic sheet",
      },
      "what was under the concrete",
    ),
    place: word(
      { slab: "the slab itself", "thickened-edge": "a thickened edge: does not count for the slab" },
      "what was read",
      "slab",
    ),
    layer: quantity("length", "how much of the thickness read is a topping, screed or tile on the slab", {
      sign: "not-negative",
    }),
    note: text("anything seen: colour and speed of the dust, steel, plastic"),
  },
  { basis: methodBasis },
);
