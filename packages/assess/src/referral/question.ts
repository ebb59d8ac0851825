import { capital } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import type { Assessment } from "../assessment.ts";
import type { Referral } from "./referral-pack.ts";

/** What is asked follows from what stopped the job; what is not asked is said as plainly. */
export const questionFor = (job: Job, { stops }: Assessment): Referral["question"] => {
  const has = (id: string): boolean => stops.some((stop) => stop.id === id);
  const { lift } = job;
  const held = lift.anchors.holes.length > 0 ? " and its anchors" : "";
  return {
    asked: [
      ...(has("post-tension")
        ? ["Where do the tendons lie, and at which places and to which depth may holes be drilled, if anywhere?"]
        : []),
      ...(has("space-below")
        ? [`Can this suspended floor carry the concentrated loads and moments of the lift's columns${held}?`]
        : []),
      ...(has("seismic") ? ["Which seismic forces act on the lift here, and what anchors hold them?"] : []),
      ...(has("hillside") || has("moving-ground") || has("void")
        ? ["Can the ground under and beside the slab carry the lift, and what must be done to it first?"]
        : []),
      `May the ${lift.name} stand in this place on this floor, and with which anchors, holes and inspection?`,
      "If not: what concrete, or what other support, is to be built for it?",
    ],
    notAsked: [
      "Nothing about the lift itself above its base plates: that is its maker's.",
      "No approval of what is in this pack: it only collects what is known.",
      ...(has("post-tension") || has("space-below")
        ? ["No smaller version of the same lift on a promise of light use."]
        : []),
    ],
  };
};

/** Photographs an engineer asks for first. Common practice, no source. */
export const photographsFor = (job: Job, { stops }: Assessment): readonly string[] => [
  "The whole bay from the door and from the back wall.",
  "Both column places with a tape laid from the two walls.",
  "Every joint, crack and patch with a rule or crack card in the picture.",
  ...(stops.some(({ id }) => id === "post-tension")
    ? ["The stamp or sign, and the patches along the slab's edge, with a tape."]
    : []),
  ...(stops.some(({ id }) => id === "space-below")
    ? ["The ceiling of the room below, its beams, walls and cracks."]
    : []),
  "The slab's edge outside, the ground beside it, any slope or retaining wall.",
  ...(job.floor.readings.length > 0 ? ["Each test hole with the tape in it."] : []),
  "The lift's data plate and the floor page of its manual.",
];

export const notVerified = (job: Job, { missing }: Assessment): readonly string[] => {
  const { floor, setting, lift } = job;
  const open = (unknown: boolean, words: string): readonly string[] => (unknown ? [words] : []);
  const hearsay = [
    ...(floor.postTension.known && floor.postTension.basis.kind === "stated" ? ["post-tension"] : []),
    ...(floor.heat.known && floor.heat.basis.kind === "stated" ? ["heating"] : []),
    ...(floor.utilities.known && floor.utilities.basis.kind === "stated" ? ["pipes and conduits"] : []),
    ...(floor.below.known && floor.below.basis.kind === "stated" ? ["what is below"] : []),
    ...(floor.thickness.known && floor.thickness.basis.kind === "stated" ? ["named thickness"] : []),
    ...(floor.strength.specified.known && floor.strength.specified.basis.kind === "stated" ? ["named strength"] : []),
  ];
  return [
    ...new Set([
      ...missing.map(({ what }) => sentence(what)),
      ...open(
        !floor.postTension.known && !missing.some(({ id }) => id === "post-tension"),
        "Whether the slab is post-tensioned.",
      ),
      ...open(
        !floor.heat.known && !missing.some(({ id }) => id === "heat"),
        "Whether there are tubes or wires in the slab.",
      ),
      ...open(
        !floor.utilities.known && !missing.some(({ what }) => /pipes/.test(what)),
        "Where pipes, drains and conduits lie.",
      ),
      ...open(
        floor.readings.length === 0 && !missing.some(({ id }) => id === "thickness"),
        "Thickness: no reading was taken.",
      ),
      ...open(
        floor.strength.cylinders.length + floor.strength.cores.length === 0 &&
          !missing.some(({ id }) => id === "strength"),
        "Strength: no test is on record.",
      ),
      ...open(floor.bars.length === 0, "Reinforcement: no scan and no schedule."),
      ...open(!setting.seismic.known, "Seismic design category."),
      ...open(!floor.ground.bearing.known, "Allowable ground pressure: no soil report."),
      ...open(lift.reactions.length === 0, "Base reactions: the maker has not been asked, or has not answered."),
      ...open(hearsay.length > 0, `Stated by somebody and not shown: ${hearsay.join(", ")}.`),
    ]),
  ];
};

const sentence = (words: string): string => `${capital(words)}.`;
