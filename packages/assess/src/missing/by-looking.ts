import type { Job } from "@floorworthy/job";
import { chosen, isStanding, looking, type Question } from "./question.ts";

type FloorKey = "postTension" | "heat" | "below" | "utilities" | "layer";

const floorQuestion = (
  key: FloorKey,
  question: Pick<Question, "id" | "what" | "how"> & Partial<Pick<Question, "cost">>,
  worst: string,
  best: string,
  alsoOpen: (job: Job) => boolean = () => true,
): Question => ({
  ...looking,
  ...question,
  open: (job) => isStanding(job) && !job.floor[key].known && alsoOpen(job),
  worst: (job) => ({ ...job, floor: { ...job.floor, [key]: chosen(worst) } }),
  best: (job) => ({ ...job, floor: { ...job.floor, [key]: chosen(best) } }),
});

const nothingDrilled = ({ floor }: Job): boolean =>
  !floor.readings.some(({ method }) => method === "drill" || method === "core");

/** Found out with the eyes, the telephone and a hammer. */
export const byLooking: readonly Question[] = [
  floorQuestion(
    "postTension",
    {
      id: "post-tension",
      what: "whether the slab is post-tensioned",
      how: "look for a stamp or sign at the door and for grouted pockets along the slab's edge; ask for the drawings",
    },
    "suspected",
    "none-shown",
  ),
  floorQuestion(
    "heat",
    {
      id: "heat",
      what: "whether there are heating tubes in the slab",
      how: "look for a manifold or a thermostat; ask who was there at the pour",
    },
    "not-located",
    "none",
  ),
  floorQuestion(
    "below",
    {
      id: "below",
      what: "what lies below the slab",
      how: "walk round the house and look for a door or a space below",
    },
    "space",
    "ground",
    (job) => !job.floor.kind.known,
  ),
  floorQuestion(
    "utilities",
    {
      id: "utilities",
      what: "whether pipes, wires or drains lie in or under the slab",
      how: "call the locating service (811 in the US) some days ahead; look where drains and conduits enter",
      cost: "$0, some days",
    },
    "not-located",
    "none",
  ),
  floorQuestion(
    "layer",
    {
      id: "layer",
      what: "whether the top is a layer of its own",
      how: "tap the floor with a hammer or drag a chain: a layer that has come loose sounds hollow",
    },
    "loose-topping",
    "none",
    nothingDrilled,
  ),
  {
    ...looking,
    id: "top",
    what: "whether a beam ties the columns overhead",
    how: "look at the maker's sheet, or up",
    open: ({ lift }) => lift.kind === "two-post" && !lift.top.known,
    worst: (job) => ({ ...job, lift: { ...job.lift, top: chosen("free-standing") } }),
    best: (job) => ({ ...job, lift: { ...job.lift, top: chosen("overhead-tied") } }),
  },
];
