import { choice, group, quantity } from "../fields/index.ts";
import type { PadWishes } from "../job.ts";

export const padForm = group<PadWishes>(
  "the pad",
  "wishes for the thick concrete under the columns; all may be left out",
  {
    shape: choice(
      {
        "two-pads": "a rectangle under each column",
        "joined-circles": "a circle about each column, joined across the middle",
        strip: "one strip under both columns",
        "whole-bay": "the whole floor thicker",
      },
      "shape wanted; every shape is tried when left out",
    ),
    join: choice(
      {
        "cast-with": "cast in one with the slab",
        dowelled: "cut out and joined by dowels",
        undercut: "cut out and reaching under the old slab",
        separate: "cut out and not joined",
      },
      "how it should hang together with the slab",
    ),
    reinforcement: choice(
      { none: "plain concrete", bars: "bars both ways, top and bottom", fibre: "fibres in the mix" },
      "what should be in it; the cheapest that holds when left out",
    ),
    collapseMargin: quantity("number", "least margin against collapse by yield lines"),
    anchorMargin: quantity("number", "least margin of the anchors in cracked concrete"),
    groundMargin: quantity("number", "least margin against the allowable ground pressure"),
    leastDepth: quantity("length", "not shallower than this"),
    mostDepth: quantity("length", "not deeper than this"),
    clearToWall: quantity("length", "kept between a cut-out pad and a wall or the slab's edge", {
      sign: "not-negative",
    }),
    planStep: quantity("length", "sizes in plan go by this"),
    depthStep: quantity("length", "depths go by this"),
  },
);
