import type { FieldName } from "../candidates/index.ts";

/** What is asked for when the manual does not say it, in the order of the sheet; the holes have no candidate. */
export const questions: readonly (readonly [FieldName | "anchors.holes", string])[] = [
  ["top", "what holds the tops of the columns"],
  ["rated", "the rated load"],
  ["columnWeight", "the weight of one column with carriage and arms"],
  ["spacing", "the distance between the centres of the columns"],
  ["overallHeight", "the height over all"],
  ["overallWidth", "the width over all"],
  ["base.width", "the width of the base plate"],
  ["base.depth", "the depth of the base plate"],
  ["base.thickness", "the thickness of the base plate"],
  ["anchors.holes", "the places of the holes in the base plate"],
  ["anchors.count", "the number of anchors in one base"],
  ["anchors.product.kind", "the kind of anchor"],
  ["anchors.product.diameter", "the diameter of the anchors"],
  ["anchors.product.length", "the length of the anchors"],
  ["anchors.product.nominalEmbedment", "how deep the anchors are set"],
  ["anchors.product.holeDiameter", "the diameter of the drill bit"],
  ["anchors.product.holeDepth", "the depth of the drilled holes"],
  ["anchors.torque", "the torque of the anchors"],
  ["anchors.firstRound", "when the nuts are checked first"],
  ["anchors.roundEvery", "how often the nuts are checked"],
  ["anchors.shimLimit", "the highest stack of shims"],
  ["asks.thickness", "the least thickness of the concrete"],
  ["asks.strength", "the least compressive strength of the concrete"],
  ["asks.days", "the least age of the concrete before drilling"],
  ["asks.edge", "the least distance from an anchor to an edge"],
  ["asks.joint", "the least distance from an anchor to a joint or saw cut"],
  ["asks.crack", "the least distance from an anchor to a crack"],
  ["asks.wall", "the least distance to a wall"],
  ["asks.reinforcement", "the reinforcement asked for"],
  ["asks.slope", "the steepest floor allowed"],
  ["asks.ceiling", "the least clear height"],
];

const names = new Map<string, string>(questions);

/** A line of the sheet in words. */
export const inWords = (field: FieldName | "anchors.holes"): string =>
  names.get(field) ??
  {
    arms: "how the arms stand",
    tieHeight: "the height of the overhead beam",
    "anchors.product.effectiveEmbedment": "the effective embedment of the anchors",
    "anchors.patternAcross": "the hole pattern across",
    "anchors.patternAlong": "the hole pattern along",
    columnsInside: "the clear width between the columns",
    weight: "the weight of the lift",
    power: "the mains supply",
    "reactions.P": "the maker's downward force on one column",
    "reactions.Min": "the maker's moment on one column",
    "reactions.Mfa": "the maker's moment along the vehicle",
    "reactions.Vu": "the maker's shear on one column",
    "reactions.Vv": "the maker's shear along the vehicle",
  }[field as string] ??
  field;
