import type { Default } from "@floorworthy/job";

const practice = "common practice, no source";

const inches = (value: number, why: string): Default => ({ value, unit: "in", why, source: practice });

/** The distances and depths of the drill test. */
export const drillPractice = {
  edge: inches(24, "slabs are often cast thicker along their edges, so a hole there reads the edge and not the slab"),
  edgeAtLeast: inches(12, "nearer to an edge than this a hole says nothing and may break it"),
  line: inches(6, "a hole beside a joint or a crack weakens what is left there"),
  zone: inches(6, "the sides of a thicker part may slope, and its edge is a cold joint"),
  footing: inches(12, "beside a footing or a thick edge the underside slopes away from the slab's"),
  pipe: inches(12, "no distance is written for this line"),
  thing: inches(6, "the drill with its shroud needs room"),
  plate: inches(1, "the hole must not lie under the base plate"),
  otherHole: inches(6, "holes close together weaken what is between them"),
  /** of a reading from the corner or the middle it speaks for */
  speaksFor: inches(24, "a reading farther away speaks for another place"),
  /** what must be seen of the hole below the slab to hook its underside */
  underside: inches(1, "the bit must come out below so that a hook finds the underside"),
  bit: inches(3 / 8, "large enough for a hook, small enough to fill without a trace"),
  anchorHoleBeyondEmbedment: inches(1 / 2, "an anchor's hole is drilled a little deeper than the anchor goes"),
  anchorHole: inches(5, "the anchor's sheet is not in hand; most anchors of such lifts need no deeper hole"),
  basePlate: inches(20, "the base plate is not known; plates of such lifts are about this large"),
  step: inches(1 / 2, "readings of one base that differ by more than the method's error show a change of thickness"),
} as const satisfies Readonly<Record<string, Default>>;

/** Cone of an anchor at the surface: 1.5 hef around it. ACI 318-19 17.6.2.1.1 */
export const CONE_REACH = 1.5;

/** A future anchor stays this many of its own hole depths from any hole that is not filled. Common practice, no source. */
export const HOLE_DEPTHS = 2;
