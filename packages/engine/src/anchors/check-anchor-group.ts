import { unionOutline } from "../geometry/index.ts";
import { type Unable, unable } from "../quantities/index.ts";
import type { Anchor, AnchorAssessment, AnchorConcrete, AnchorMode, AnchorProduct, SlabPiece } from "./anchor-group.ts";
import { designBasis } from "./design-basis.ts";
import { faultOf } from "./input-faults.ts";
import { interactionCheck } from "./interaction-check.ts";
import { minimumChecks } from "./minimum-checks.ts";
import { missingFacts } from "./missing-facts.ts";
import { notesOn } from "./notes.ts";
import { shearChecks } from "./shear-checks.ts";
import { tensionChecks } from "./tension-checks.ts";
import { turnedAnchors, turnedBarriers, turnedPolygon } from "./turned.ts";

const PLACE = "anchors";

/**
 * The anchors of one base: steel, breakout, pull-out, splitting, shear, pry-out, interaction and minimum distances to
 * ACI 318-19 chapter 17.
 *
 * Breakout bodies are squares along the axes of the base, `axis` radians from plan x (counter-clockwise). Static loads
 * only; bond of adhesive anchors (17.6.5) and earthquake (17.10) are not covered.
 * Fails: Unable for no anchors, two anchors at one place, a number that is not finite, or a size or strength that is not
 * above 0. Anchors that lack data are checked as far as it goes; what is absent stands in `missing`.
 */
export const checkAnchorGroup = (
  anchors: readonly Anchor[],
  product: AnchorProduct,
  concrete: AnchorConcrete,
  piece: SlabPiece,
  mode: AnchorMode,
  axis = 0,
): AnchorAssessment | Unable => {
  const fault = faultOf(anchors, product, concrete, piece);
  if (fault !== undefined) return unable(PLACE, fault);
  const basis = designBasis(product, concrete, turnedBarriers(piece.barriers, -axis), mode);
  const placed = turnedAnchors(anchors, -axis);
  const tension = tensionChecks(placed, basis);
  const shear = shearChecks(placed, basis);
  const together = interactionCheck(tension.checks, shear);
  return {
    checks: [...tension.checks, ...shear, ...(together ? [together] : []), ...minimumChecks(placed, basis)],
    hef: basis.hef,
    areas: unionOutline(tension.regions).map((outline) => turnedPolygon(outline, axis)),
    notes: notesOn(placed, basis),
    missing: missingFacts(product, concrete, mode),
  };
};
