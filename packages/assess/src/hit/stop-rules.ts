import type { Job } from "@floorworthy/job";
import type { Stop } from "../assessment.ts";
import { stopsOf } from "../stops/stops.ts";
import type { Hit } from "./hit.ts";
import { zonesAt } from "./hole-facts.ts";

/** What must be true before anything is cut or moved; the first word of every advice. Common practice, no source. */
export const stopRules = (job: Job, hit: Hit): Stop[] => {
  const stops = [...metStops(hit), ...stopsOf(job), ...openQuestions(job), ...placeStops(job, hit)];
  return stops.filter((s, i) => stops.findIndex((other) => other.id === s.id) === i);
};

const stop = (id: string, outcome: Stop["outcome"], reason: string, next: string): Stop => ({
  id,
  outcome,
  reason,
  next,
});

const metStops = ({ met }: Hit): Stop[] => {
  switch (met) {
    case "tendon":
      return [
        stop(
          "met-tendon",
          "refuse",
          "The drill met a tendon. A strand holds tons and lets go without warning.",
          "Drill off, everybody out of line of the slab's edges, nobody pulls or cuts. A post-tensioning contractor and a licensed structural engineer look first.",
        ),
      ];
    case "conduit":
      return [
        stop(
          "met-conduit",
          "refuse",
          "The drill met a conduit: it may be live.",
          "Do not touch bit or concrete; switch off at the panel, have an electrician make it safe and trace the run before another hole.",
        ),
      ];
    case "tube":
      return [
        stop(
          "met-tube",
          "refuse",
          "The drill met a tube.",
          "Shut the zone or the valve, smell for gas, have it traced, repaired and tested under pressure before another hole.",
        ),
      ];
    case "metal":
      return [
        stop(
          "unknown-metal",
          "hold",
          "Nobody knows what metal this is: a bar, a conduit, a pipe or a tendon.",
          "Stop. Cover meter or radar over the whole base, then the drawings; go on only when it is shown to be one bar of a grid.",
        ),
      ];
    case "void":
      return [
        stop(
          "met-void",
          "refer",
          "The bit fell into a hollow: the slab has a void in it or under it.",
          "Sound the whole base and find how far it reaches; a licensed engineer says whether the slab may stay.",
        ),
      ];
    case "bar":
      return [];
  }
};

/** What nobody has ruled out may be what the drill met. */
const openQuestions = ({ floor }: Job): Stop[] => [
  ...(floor.postTension.known
    ? []
    : [
        stop(
          "post-tension-open",
          "hold",
          "Nobody has ruled out post-tensioning: the steel may be a tendon.",
          "Look for the stamp and the pockets along the edges, find the drawings, have the slab scanned.",
        ),
      ]),
  ...(floor.heat.known && floor.utilities.known
    ? []
    : [
        stop(
          "lines-open",
          "hold",
          "Nobody has ruled out heating tubes, pipes and conduits in this slab.",
          "Cover meter, thermal camera, locating service; then ask again.",
        ),
      ]),
  ...(floor.below.known || floor.kind.known
    ? []
    : [
        stop(
          "below-open",
          "hold",
          "Nobody has said that the slab lies on the ground: steel of a suspended floor carries it.",
          "Look below and round the house; then ask again.",
        ),
      ]),
];

const placeStops = (job: Job, { hole }: Hit): Stop[] =>
  zonesAt(job, hole).some(({ kind }) => kind === "footing" || kind === "thickened-edge")
    ? [
        stop(
          "footing",
          "refer",
          "This hole is over a footing or a thickened edge: its steel carries the building.",
          "Nothing is cut. A licensed engineer looks, or the lift moves clear of it.",
        ),
      ]
    : [];
