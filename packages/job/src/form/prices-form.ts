import { group, price, quantity, text } from "../fields/index.ts";
import type { Prices } from "../job.ts";

/** Every price may be left out; an invented one stands in, and is said to. */
export const pricesForm = group<Prices>(
  "the prices",
  "your own quotes; where one is missing an invented figure stands in",
  {
    currency: text("the sign printed before amounts; $ when left out", 5),
    concrete: price("volume", "ready-mixed concrete"),
    shortLoad: price("each", "fee for a small load"),
    fullLoad: quantity("volume", "from this volume on there is no fee"),
    bag: price("each", "a bag of dry mix"),
    bagWeight: quantity("force", "weight of that bag"),
    bar: price("force", "reinforcing bars"),
    mesh: price("area", "welded wire mesh"),
    fibre: price("force", "fibres for the mix"),
    dowel: price("each", "a dowel with its hole and glue"),
    vapourSheet: price("area", "vapour retarder"),
    baseCourse: price("volume", "crushed stone, compacted"),
    formwork: price("length", "forms and expansion strip"),
    saw: price("length", "sawing through the old slab"),
    sawCall: price("each", "least the sawyer comes for"),
    jointSaw: price("length", "sawing a joint into new concrete"),
    breakOut: price("area", "breaking out the old slab"),
    removal: price("volume", "carting away concrete and soil"),
    labour: price("time", "a worker's hour"),
  },
);
