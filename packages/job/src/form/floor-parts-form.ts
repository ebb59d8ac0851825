import { choice, dateNeeded, group, line, list, name, quantity, required, text, word } from "../fields/index.ts";
import type { Bars, Crack, Ground, Pipe } from "../floor.ts";

export const barsForm = group<{ readonly [K in keyof Bars]: K extends "size" ? string | undefined : Bars[K] }>(
  "a layer of bars",
  "bars of one size",
  {
    size: required(text("size as the trade names it, such as #4", 20)),
    spacing: quantity("length", "between bars"),
    depth: quantity("length", "from the surface to the middle of the bars"),
    direction: word(
      { x: "bars run from left to right", y: "from back to door", both: "both ways" },
      "which way they run",
      "both",
    ),
  },
);

export const groundForm = group<Ground>("the ground", "what the slab lies on", {
  soil: choice(
    { gravel: "gravel", sand: "sand", silt: "silt", clay: "clay", organic: "peat or topsoil", rock: "rock" },
    "the soil",
  ),
  wet: choice({ dry: "dry", damp: "damp", wet: "wet" }, "how wet it is"),
  base: choice(
    { none: "slab on the soil", gravel: "gravel", "crushed-stone": "crushed stone, compacted" },
    "the layer under the slab",
  ),
  foam: choice(
    { none: "no foam", "under-slab": "under the slab, left out under pads", everywhere: "everywhere" },
    "foam insulation",
  ),
  k: quantity("subgrade-modulus", "modulus of subgrade reaction"),
  bearing: quantity("stress", "pressure the ground may carry"),
  voids: choice({ none: "no hollow found", found: "a hollow was found" }, "hollows under the slab"),
});

const sighting = group<Crack["seen"][number]>("a sighting", "the crack on one day", {
  on: dateNeeded("the day"),
  width: quantity("length", "its width that day", { sign: "not-negative" }),
  length: quantity("length", "its length that day"),
});

export const crackForm = group<Crack>("a crack", "a crack", {
  name: name("its name"),
  line: line("its course, two places or more"),
  width: quantity("length", "its width", { sign: "not-negative" }),
  step: quantity("length", "how much higher one side is", { sign: "not-negative" }),
  seen: list("earlier looks at it", sighting, { most: 100 }),
});

export const pipeForm = group<Pipe>("a pipe", "a pipe, tube or conduit in or under the slab", {
  name: name("its name"),
  kind: word(
    {
      water: "water",
      drain: "drain",
      gas: "gas",
      conduit: "electric conduit",
      heating: "heating tube or wire",
      unknown: "nobody knows",
    },
    "what it carries",
    "unknown",
  ),
  line: line("its course, two places or more"),
  depth: quantity("length", "from the surface to its top", { sign: "not-negative" }),
  clear: quantity("length", "to be kept free of drilling to either side", { sign: "not-negative" }),
});
