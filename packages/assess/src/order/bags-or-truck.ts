import { settingWindow } from "@floorworthy/engine/concrete";
import { bagsFor, bagYield, mixersNeeded, placingGuard } from "@floorworthy/engine/orders";
import { fromBase, printNumber } from "@floorworthy/engine/quantities";
import { type Job, priceOf } from "@floorworthy/job";
import { count } from "./amounts.ts";
import { costOf, costsTogether } from "./costs.ts";
import type { BagsOrTruck, Cost } from "./order.ts";
import { mixingPractice } from "./practice.ts";

/** °C on pour day, from the job's first spell. */
const pourTemperature = ({ pour }: Job): { readonly value: number; readonly words: string } => {
  const mean = pour?.temperatures[0]?.mean;
  return mean?.known
    ? { value: mean.high, words: "the first spell of the job" }
    : { value: mixingPractice.temperature, words: "nobody has said; an ordinary day" };
};

/** Ready-mix, with the fee for a small load. */
export const truckCost = (job: Job, ordered: number): Cost => {
  const concrete = costOf(job, "concrete", ordered);
  return ordered < priceOf(job, "fullLoad").value - 1 ? costsTogether(concrete, costOf(job, "shortLoad", 1)) : concrete;
};

interface Compared {
  readonly inTime: boolean;
  readonly better: BagsOrTruck["better"];
  readonly bags: number;
  readonly bag: string;
  readonly setHours: number;
  readonly mixers: number | "none";
}

/** Nobody mixes more bags than this in a day. */
const A_DAYS_WORK = 200;

const sentenceFor = ({ inTime, better, bags, bag, setHours, mixers }: Compared): string => {
  const hours = printNumber(bags / mixingPractice.perHour, 1);
  if (bags > A_DAYS_WORK) return `Ready-mix: by hand it would be ${printNumber(bags, 0)} bags of ${bag}.`;
  if (!inTime)
    return `Ready-mix: ${bags} bags of ${bag} take ${hours} h at one mixer, and the first concrete of a piece sets after ${printNumber(setHours, 1)} h: a cold joint in the middle${mixers === "none" ? "" : ` unless ${mixers} mixers run`}.`;
  return better === "bags"
    ? `Bags will do: ${bags} of ${bag}, ${hours} h at one mixer, each piece whole before it sets.`
    : `Ready-mix is cheaper; ${bags} bags of ${bag} would take ${hours} h at one mixer.`;
};

/**
 * Mixing by hand against the truck. A piece poured in one go must be whole before its first concrete sets; concrete laid
 * against concrete that has set is a cold joint.
 * @param largest - the largest piece poured in one go, mm³, waste counted
 */
export const bagsOrTruck = (job: Job, net: number, gross: number, largest: number, ordered: number): BagsOrTruck => {
  const { value: bagWeight, written: bag } = priceOf(job, "bagWeight");
  const made = bagYield(bagWeight);
  const bags = (volume: number) => bagsFor(volume, made);
  const { value: warm, words } = pourTemperature(job);
  const setHours = Math.round(settingWindow(warm).from * 10) / 10;
  const plan = {
    batches: bags(largest),
    perHour: mixingPractice.perHour,
    setHours,
    finishingHours: mixingPractice.finishingHours,
  };
  const guard = placingGuard({ ...plan, mixers: 1 });
  const mixers = mixersNeeded(plan);
  const yielded = {
    symbol: "y",
    words: "a bag makes",
    value: fromBase(made, "ft³"),
    unit: "ft³",
    clause: "0.15 ft³ per 20 lb of dry mix (trade pages); the bag's own figure is better",
  } as const;
  const [truck, byHand] = [truckCost(job, ordered), costOf(job, "bag", bags(gross))];
  const inTime = guard.ratio <= 1;
  const better = inTime && byHand.amount < truck.amount ? "bags" : "truck";
  return {
    better,
    bag,
    sentence: sentenceFor({ inTime, better, bags: bags(gross), bag, setHours, mixers }),
    net: count("n", `bags of ${bag} before waste`, bags(net), { formula: "V / y, whole bags", from: [yielded] }),
    withWaste: count("n", `bags of ${bag} with waste`, bags(gross), { formula: "V (1 + w) / y", from: [yielded] }),
    guard: {
      ...guard,
      capacity: {
        ...guard.capacity,
        from: [
          {
            symbol: "T",
            words: `temperature: ${words}`,
            value: job.units === "si" ? warm : fromBase(warm, "°F"),
            unit: job.units === "si" ? "°C" : "°F",
          },
        ],
      },
    },
    mixers,
    truckCost: truck,
    bagsCost: byHand,
  };
};
