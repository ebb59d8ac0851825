import { factsOf } from "../facts/facts.ts";
import { amount, chosen, isStanding, looking, type Question } from "./question.ts";

const OLD_DAYS = 10_000;
/** A crack that is plainly a break: an eighth wide, a sixteenth of step, mm. */
const [BROKEN, STEPPED] = [25.4 / 8, 25.4 / 16];

/** Found out with a paper, a tape, a level or a crack card. */
export const byAsking: readonly Question[] = [
  {
    ...looking,
    id: "days",
    what: "when the concrete under the bases was poured",
    how: "ask the owner or the builder; a permit or a photograph dates it",
    open: (job) => {
      const { age, thickness } = factsOf(job);
      const poured = thickness.every(({ zone }) => zone?.state !== "proposed");
      return isStanding(job) && poured && job.lift.asks.days.known && age.days === undefined;
    },
    worst: (job) => ({ ...job, floor: { ...job.floor, ageDays: amount(0) } }),
    best: (job) => ({ ...job, floor: { ...job.floor, ageDays: amount(OLD_DAYS) } }),
  },
  {
    ...looking,
    id: "ceiling",
    what: "headroom over the bay",
    how: "measure the lowest point over the bay: light, opener, door track",
    open: ({ lift, bay }) =>
      !bay.ceiling.known && (lift.asks.ceiling.known || lift.overallHeight.known || lift.tieHeight.known),
    worst: (job) => ({ ...job, bay: { ...job.bay, ceiling: amount(2000) } }),
    best: (job) => ({ ...job, bay: { ...job.bay, ceiling: amount(10_000) } }),
  },
  {
    ...looking,
    id: "slope",
    what: "slope of the floor under the bases",
    how: "a long level at the corners of every base",
    open: (job) => isStanding(job) && job.lift.asks.slope.known && !job.floor.slope.known,
    worst: (job) => ({ ...job, floor: { ...job.floor, slope: amount(0.1) } }),
    best: (job) => ({ ...job, floor: { ...job.floor, slope: amount(0) } }),
  },
  {
    ...looking,
    id: "cracks",
    what: "width, step and growth of the cracks",
    how: "a crack card and a straightedge; marks at both ends, the date, and a second look a month later",
    open: (job) => isStanding(job) && job.floor.cracks.some((crack) => !crack.width.known || !crack.step.known),
    worst: (job) => withCracks(job, BROKEN, STEPPED),
    best: (job) => withCracks(job, 0.1, 0),
  },
  {
    id: "reinforcement",
    what: "what steel is in the slab",
    how: "a cover meter or radar over every base, or the drawings",
    cost: "$0 for drawings, $50 to $150 to hire a cover meter",
    costClass: "small",
    risk: "none",
    open: ({ lift, floor }) =>
      lift.asks.reinforcement.known && lift.asks.reinforcement.value !== "none" && !floor.reinforcement.known,
    worst: (job) => ({ ...job, floor: { ...job.floor, reinforcement: chosen("none") } }),
    best: (job) => ({ ...job, floor: { ...job.floor, reinforcement: job.lift.asks.reinforcement } }),
  },
];

/** What is known of a crack stays; only what nobody measured is answered. */
const withCracks = (job: Parameters<Question["worst"]>[0], width: number, step: number) => ({
  ...job,
  floor: {
    ...job.floor,
    cracks: job.floor.cracks.map((crack) => ({
      ...crack,
      width: crack.width.known ? crack.width : amount(width),
      step: crack.step.known ? crack.step : amount(step),
    })),
  },
});
