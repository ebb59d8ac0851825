import type { Choice, Job } from "@floorworthy/job";
import type { Stop } from "../assessment.ts";
import { outOfService } from "../upkeep/out-of-service.ts";

const is = <T extends string>(choice: Choice<T>, ...words: T[]): boolean =>
  choice.known && words.includes(choice.value);

type Rule = (job: Job) => Stop | undefined;

const stop = (id: string, outcome: Stop["outcome"], reason: string, next: string): Stop => ({
  id,
  outcome,
  reason,
  next,
});

/** In the order in which a hit wins. Common practice of the trade; each names who must look instead. */
const rules: readonly Rule[] = [
  outOfService,
  ({ floor }) =>
    is(floor.postTension, "stamped", "suspected")
      ? stop(
          "post-tension",
          "refuse",
          floor.postTension.known && floor.postTension.value === "stamped"
            ? "The slab is marked post-tensioned. A cut strand can kill and can break the floor: no hole may be drilled, not even a test hole."
            : "The slab may be post-tensioned. Until that is ruled out no hole may be drilled, not even a test hole.",
          "The slab's owner agrees, the tendon drawings are found, the tendons are mapped, and a licensed structural engineer releases each hole in writing. A lift that needs no anchors may be looked at instead.",
        )
      : undefined,
  ({ floor }) =>
    is(floor.below, "space") || is(floor.kind, "suspended", "hollow-core", "deck")
      ? stop(
          "space-below",
          "refuse",
          "There is a room or a void below: this is a suspended floor, not concrete on the ground. An allowable load per area does not allow a column's load and moment.",
          "A licensed structural engineer analyses the building; nothing is drilled before.",
        )
      : undefined,
  ({ floor }) =>
    is(floor.kind, "asphalt", "pavers", "timber", "gravel")
      ? stop(
          "not-concrete",
          "refuse",
          "The floor is not concrete: anchors have nothing to hold in.",
          "Pour a slab or a strip designed for the lift, or take a lift that needs no anchors where its maker allows this floor.",
        )
      : undefined,
  ({ lift }) =>
    is(lift.manual, "missing")
      ? stop(
          "no-manual",
          "hold",
          "The maker's manual with its floor page is not in hand. Without it nobody knows what this lift asks of a floor.",
          "Ask the maker for the manual of this very model and edition.",
        )
      : undefined,
  ({ floor }) =>
    is(floor.heat, "not-located") || is(floor.utilities, "not-located")
      ? stop(
          "pipes-not-located",
          "hold",
          "Tubes, wires or pipes lie in or under this slab and nobody knows where.",
          "Have them located (heat on and a thermal camera, radar, the utility locating service) before any hole.",
        )
      : undefined,
  ({ setting }) =>
    is(setting.seismic, "D", "E", "F") || (is(setting.seismic, "C") && is(setting.use, "shop", "public"))
      ? stop(
          "seismic",
          "refer",
          "The site is in a seismic design category where anchors need an engineer's design.",
          "Send the filled-in sheet to a licensed engineer; only an engineer chooses the seismic forces.",
        )
      : undefined,
  ({ setting }) =>
    is(setting.use, "public")
      ? stop(
          "public",
          "refer",
          "A school or public building needs an engineer's design and the building official.",
          "Send the filled-in sheet to a licensed engineer.",
        )
      : undefined,
  ({ setting }) =>
    is(setting.permit, "required")
      ? stop(
          "permit",
          "refer",
          "A permit is required here and not granted: the building official says what must be shown, often an engineer's letter.",
          "Ask the official what must be shown; where that is an engineer's letter, send the filled-in sheet to a licensed engineer. Write it down here once the permit is granted.",
        )
      : undefined,
  ({ setting }) =>
    is(setting.weather, "outdoors")
      ? stop(
          "outdoors",
          "refer",
          "Wind, frost and rain act on a lift outdoors, and its maker may not allow it.",
          "Ask the maker in writing, then a licensed engineer.",
        )
      : undefined,
  ({ setting }) =>
    is(setting.slopeNear, "near")
      ? stop(
          "hillside",
          "refer",
          "A slope, cut, fill or retaining wall is near the slab.",
          "A licensed engineer looks at the ground first.",
        )
      : undefined,
  ({ floor }) =>
    is(floor.movement, "heave", "expansive-clay", "settlement", "frost")
      ? stop(
          "moving-ground",
          "refer",
          "The ground moves: heave, settlement, frost or swelling clay.",
          "A licensed engineer looks at the ground before anything stands on it.",
        )
      : undefined,
  ({ floor }) =>
    is(floor.ground.voids, "found") || floor.readings.some((r) => is(r.under, "void"))
      ? stop(
          "void",
          "refer",
          "There is a void under the slab: it bridges, and bridges break.",
          "Find how far it reaches and fill it; a licensed engineer says whether the slab may stay.",
        )
      : undefined,
  ({ floor }) =>
    is(floor.layer, "loose-topping", "screed")
      ? stop(
          "loose-layer",
          "refuse",
          "The top is a layer of its own, not the slab: anchors must hold in the concrete that carries.",
          "Take the layer off under the bases or pour pads through it.",
        )
      : undefined,
  ({ setting }) =>
    is(setting.slabOwner, "landlord-not-asked")
      ? stop(
          "consent",
          "hold",
          "The slab belongs to somebody who has not been asked.",
          "Get the owner's consent in writing.",
        )
      : undefined,
];

/** Everything that stops the arithmetic, most serious first; empty when nothing does. */
export const stopsOf = (job: Job): Stop[] => {
  const hits = rules.flatMap((rule) => rule(job) ?? []);
  const rank = { refuse: 0, "out-of-service": 0, refer: 1, hold: 2 } as const;
  return hits
    .map((hit, i) => ({ hit, i }))
    .sort((a, b) => rank[a.hit.outcome] - rank[b.hit.outcome] || a.i - b.i)
    .map(({ hit }) => hit);
};
