import type { Job } from "@floorworthy/job";
import { drillPractice } from "./practice.ts";
import type { Look } from "./survey-plan.ts";
import { lengthWords } from "./words.ts";

/** Common practice of the drill test, no source; dust: 29 CFR 1926.1153. */
export const record = ({ units }: Job): readonly string[] => [
  "Its place from the left and from the back wall, as drilled.",
  `How it ended: the mark flush and the bit still in concrete (at least this thick), or the bit dropped before the mark (at most this thick), or through, vacuumed and hooked at the underside (this thick), to ${lengthWords(25.4 / 8, units)}.`,
  "What came out: grey or brown dust, slow with sparks (steel), black shavings (plastic sheet), blue or pink crumbs (foam).",
  "What is under it: gravel, sand, clay, wet, foam, or a hollow.",
  "A layer in the side of the hole: screed, topping, tile; where it ends.",
  "A photograph with the tape in it.",
];

export const stopsOnTheSpot: readonly string[] = [
  "A stamp, a sign or patches of tendons (post-tension): no hole at all.",
  "A heating manifold, or tubes nobody has located.",
  "A room, crawl space or cistern below.",
  "Pipes or conduits not located.",
  "The bit meets steel, plastic, a tube or a wire, or coloured shavings, water or a smell come out.",
  "The bit falls into a hollow: stop, note the depth, do not lift here.",
];

export const drillingCautions: readonly string[] = [
  "Dust harms the lungs: shroud and vacuum at the drill, hole vacuumed, no dry sweeping or blowing out.",
  "Eye protection and gloves; power through a ground-fault breaker (GFCI, RCD); never in standing water.",
  "One hole at a time, never deeper than the mark.",
  "Fill every hole the same day with non-shrink mortar, flush.",
];

export const edgeReading = ({ units }: Job): string =>
  `A hole nearer than ${lengthWords(24 * 25.4, units)} to the slab's edge lies: slabs are cast thicker along their edges and under doors, so it reads the edge, not the floor under the lift. It never counts for the slab.`;

/** Facts for the same visit that the file does not have yet. */
export const otherFacts = ({ floor, bay, lift, vehicles, units }: Job): readonly Look[] => {
  const open = (wanted: boolean, what: string, how: string): readonly Look[] => (wanted ? [{ what, how }] : []);
  return [
    ...open(
      floor.joints.length === 0,
      "Joints and saw cuts",
      "both ends of each, taped from the two walls; write none where there is none",
    ),
    ...open(
      floor.cracks.length === 0 || floor.cracks.some(({ width }) => !width.known),
      "Cracks",
      "course from the two walls, width with a crack card, step with a straightedge, photograph with the card in it",
    ),
    ...open(!bay.outline, "Outline of the slab", "width and depth, and every edge, drain and step"),
    ...open(
      !bay.ceiling.known,
      "Ceiling",
      "lowest clear height over the lift, with lights, opener and door track open",
    ),
    ...open(
      bay.doors.length === 0 || bay.doors.some(({ height }) => !height.known),
      "Doors",
      "width, place and clear height",
    ),
    ...open(
      !floor.strength.specified.known && floor.strength.cylinders.length + floor.strength.cores.length === 0,
      "Records of the concrete",
      "order, delivery tickets, cylinder reports, the day of the pour, photographs of steel and tubes",
    ),
    ...open(
      !floor.slope.known,
      "Level",
      `water level or laser at eight points around the columns, to ${lengthWords(25.4 / 8, units)}`,
    ),
    ...open(!floor.surface.known, "Surface", "scratch it with a nail; tap for hollow sound around both columns"),
    ...open(!floor.layer.known, "Layers", "screed, topping or tile over the slab: look at an edge and in the holes"),
    ...open(
      !(lift.manual.known && lift.manual.value === "in-hand"),
      "The lift's manual",
      "floor page, model and edition",
    ),
    ...open(
      vehicles.length === 0,
      "Vehicles",
      "heaviest and longest: weight from the door label, length, frame or sill",
    ),
  ];
};

/** Where readings of one base differ. */
export const furtherHole = (units: Job["units"]): string =>
  `Where two readings of one base differ by more than ${lengthWords(drillPractice.step.value * 25.4, units)}, drill one more between them: the slab changes there.`;
