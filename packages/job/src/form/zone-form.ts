import { choice, date, group, name, outlineNeeded, plainNumber, quantity, required, word } from "../fields/index.ts";
import type { Zone } from "../floor.ts";
import { existenceWords } from "./words.ts";

export const zoneForm = group<Zone>("a zone", "a part of the floor with a thickness of its own", {
  name: name("its name"),
  kind: required(
    word(
      {
        slab: "an ordinary part of the slab",
        pad: "thickened under one column",
        strip: "thickened under both columns",
        "thickened-edge": "the slab's thick rim",
        footing: "carries the building",
        topping: "a layer over the slab",
      },
      "what it is",
      "slab",
    ),
  ),
  state: word(existenceWords, "is it there or planned", "standing"),
  outline: outlineNeeded("its outline, or {width, depth} with corner or centre"),
  thickness: quantity("length", "thickness of the concrete there"),
  sideSlope: plainNumber("number", "how far its sides run out for each unit they go down; 0 is upright", 0),
  tied: choice(
    {
      "cast-with": "cast in one with the slab",
      dowelled: "joined to it by dowels",
      undercut: "reaches under it",
      separate: "not joined",
    },
    "how it hangs together with the slab",
  ),
  strength: quantity("stress", "its own compressive strength, when it differs"),
  poured: date("the day it was poured, when it differs"),
});
