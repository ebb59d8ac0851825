import type { Job, Quantity } from "@floorworthy/job";
import { shown } from "../facts/print.ts";
import { boxOf } from "../layout.ts";
import type { Fit } from "./placing.ts";
import { practice } from "./practice.ts";

/** Heights and widths that no place in the plan can cure: plain yes or no, each with its numbers. */
export const fitsOf = (job: Job): Fit[] => [headroom(job), ...betweenColumns(job), ...roof(job), ...doorHeight(job)];

const headroom = ({ lift, bay, units }: Job): Fit => {
  const say = (mm: number): string => shown(mm, "length", units);
  const needs = [lift.asks.ceiling, lift.overallHeight, lift.tieHeight].find((fact) => fact.known);
  const fit = { id: "headroom", weight: "decides" } as const;
  if (!needs?.known)
    return { ...fit, result: "not-known", sentence: "Headroom: the lift's height over all is not known." };
  if (!bay.ceiling.known)
    return {
      ...fit,
      result: "not-known",
      sentence: `Headroom: the lift needs ${say(needs.high)}; the lowest point over it is not measured.`,
    };
  const there = bay.ceiling.low;
  return there > needs.high
    ? { ...fit, result: "fits", sentence: `Headroom: the lift needs ${say(needs.high)}, there are ${say(there)}.` }
    : {
        ...fit,
        result: "does-not-fit",
        sentence: `Headroom: the lift needs more than ${say(needs.high)}, there are only ${say(there)}.`,
      };
};

const largest = (facts: readonly Quantity[]): number | undefined => {
  const known = facts.flatMap((fact) => (fact.known ? [fact.high] : []));
  return known.length > 0 ? Math.max(...known) : undefined;
};

const betweenColumns = ({ lift, vehicles, units }: Job): Fit[] => {
  if (lift.kind !== "two-post" || !lift.spacing.known || !lift.base.outline || vehicles.length === 0) return [];
  const say = (mm: number): string => shown(mm, "length", units);
  const free = lift.spacing.low - 2 * Math.max(0, boxOf(lift.base.outline).x1);
  const given = largest(vehicles.map(({ width }) => width));
  const width = given ?? practice.vehicleWidth;
  const needs = width + 2 * practice.jamb;
  const whose = given === undefined ? `a vehicle taken as ${say(width)} wide` : `a vehicle ${say(width)} wide`;
  const words = `Between the base plates: ${say(free)} for ${whose} and ${say(practice.jamb)} on either side.`;
  return [
    {
      id: "between-columns",
      weight: given === undefined ? "limits" : "decides",
      result: free >= needs ? "fits" : "does-not-fit",
      sentence: words,
    },
  ];
};

/** The roof at full rise: under the ceiling, and under the beam where one joins the columns. */
const roof = ({ lift, bay, vehicles, units }: Job): Fit[] => {
  const high = largest(vehicles.map(({ height }) => height));
  if (high === undefined) return [];
  const fit = { id: "roof", weight: "limits" } as const;
  const say = (mm: number): string => shown(mm, "length", units);
  const beam =
    lift.top.known && lift.top.value === "overhead-tied" && lift.tieHeight.known ? lift.tieHeight.low : undefined;
  const limits = [...(bay.ceiling.known ? [bay.ceiling.low] : []), ...(beam === undefined ? [] : [beam])];
  if (limits.length === 0 || !lift.fullHeight.known || !lift.pickupHeight.known)
    return [
      {
        ...fit,
        result: "not-known",
        sentence: `Roof at full rise: a vehicle ${say(high)} high; the rise or the ceiling is not known.`,
      },
    ];
  const rise = lift.fullHeight.high - lift.pickupHeight.low;
  const under = Math.min(...limits);
  const what = under === beam ? "the overhead beam" : "the ceiling";
  return [
    high + rise <= under
      ? { ...fit, result: "fits", sentence: `Roof at full rise: ${say(high + rise)}, under ${what} at ${say(under)}.` }
      : {
          ...fit,
          result: "does-not-fit",
          sentence: `Roof at full rise: ${say(high + rise)} would meet ${what} at ${say(under)}; that vehicle may be raised only ${say(Math.max(0, under - high))}.`,
        },
  ];
};

const doorHeight = ({ bay, vehicles, units }: Job): Fit[] => {
  const high = largest(vehicles.map(({ height }) => height));
  const tallest = bay.doors.flatMap(({ height }) => (height.known ? [height.low] : []));
  if (high === undefined || tallest.length === 0) return [];
  const say = (mm: number): string => shown(mm, "length", units);
  const door = Math.max(...tallest);
  return [
    {
      id: "door-height",
      weight: "decides",
      result: high < door ? "fits" : "does-not-fit",
      sentence: `Door: ${say(door)} clear for a vehicle ${say(high)} high.`,
    },
  ];
};
