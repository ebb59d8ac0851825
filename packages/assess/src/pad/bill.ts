import { bagYield } from "@floorworthy/engine/orders";
import { fromBase, toBase } from "@floorworthy/engine/quantities";
import { currencyOf, defaults, INVENTED, inventedPrices, type Job, type PriceTaken, priceOf } from "@floorworthy/job";
import { shown } from "../facts/print.ts";
import type { PadDesign } from "./design.ts";
import { BASE_COURSE, type PadQuantities } from "./quantities.ts";

/** One line of the bill: how much of what, at which price. */
export interface BillLine {
  readonly what: string;
  /** ready to print, e.g. "2.86 yd³" */
  readonly amount: string;
  /** e.g. "190 per yd³" */
  readonly price: string;
  readonly money: number;
  readonly basis: "quoted" | "invented";
}

export interface Bill {
  readonly currency: string;
  readonly lines: readonly BillLine[];
  readonly total: number;
  /** ready mix or bags, whichever is cheaper */
  readonly concreteBy: "truck" | "bags";
  readonly note: string;
}

type Priced = keyof typeof inventedPrices;
export type PriceList = Readonly<Record<Priced, PriceTaken>>;

export const priceList = (job: Job): PriceList =>
  Object.fromEntries((Object.keys(inventedPrices) as Priced[]).map((key) => [key, priceOf(job, key)])) as PriceList;

/** Hours of work: common practice, no source. */
const HOURS = {
  /** per volume of soil dug by hand, per volume of concrete placed, per area finished and cured, per weight of bars tied */
  dig: 2 / toBase(1, "yd³"),
  place: 1 / toBase(1, "yd³"),
  bag: 3 / toBase(1, "yd³"),
  finish: 0.04 / toBase(1, "ft²"),
  tie: 0.015 / toBase(1, "lb"),
  digNew: 0.7 / toBase(1, "yd³"),
} as const;

const G = toBase(1, "kg"); // N per kg of mass

interface Item {
  readonly key: Priced;
  readonly what: string;
  readonly quantity: number;
  readonly shownAs: string;
  readonly money: number;
}

interface Items {
  readonly items: readonly Item[];
  readonly by: "truck" | "bags";
}

/** Money of a design, nothing printed: for trying many. A test holds it to the sum of the bill. */
export const costOf = (job: Job, { join }: PadDesign, q: PadQuantities, p: PriceList, dosage = 0): number => {
  const cut = join !== "cast-with";
  const hour = p.labour.value / 24;
  const ordered = q.concrete * (1 + wasteOf(job));
  const fee = cut && ordered < p.fullLoad.value ? p.shortLoad.value : 0;
  const truck = ordered * p.concrete.value + fee + hour * HOURS.place * ordered;
  const bags = Math.ceil(ordered / bagYield(p.bagWeight.value) - 1e-9) * p.bag.value + hour * HOURS.bag * ordered;
  const always =
    q.brokenArea * p.breakOut.value +
    (q.brokenVolume + q.soil) * p.removal.value +
    hour * (cut ? HOURS.dig : HOURS.digNew) * q.soil +
    q.dowels * p.dowel.value +
    q.barWeight * (p.bar.value + hour * HOURS.tie) +
    q.fibreVolume * (dosage / 1e9) * G * p.fibre.value;
  if (!cut) return always + truck;
  return (
    always +
    Math.min(truck, bags) +
    Math.max(q.perimeter * p.saw.value, p.sawCall.value) +
    q.area * (BASE_COURSE * p.baseCourse.value + p.vapourSheet.value + hour * HOURS.finish) +
    (join === "dowelled" ? 0 : q.perimeter * p.formwork.value)
  );
};

const wasteOf = (job: Job): number => (job.pour?.waste.known ? job.pour.waste.value : defaults.waste.value / 100);

export const billOf = (job: Job, design: PadDesign, q: PadQuantities, prices: PriceList): Bill => {
  const { items, by } = itemsOf(job, design, q, prices, (value, kind) => shown(value, kind, job.units));
  const lines = items
    .filter(({ money }) => money > 0)
    .map(
      ({ key, what, shownAs, money }): BillLine => ({
        what,
        amount: shownAs,
        price: prices[key].written,
        money,
        basis: prices[key].basis,
      }),
    );
  return {
    currency: currencyOf(job),
    lines,
    total: lines.reduce((s, line) => s + line.money, 0),
    concreteBy: by,
    note: lines.some(({ basis }) => basis === "invented")
      ? `Prices without a quote are ${INVENTED}.`
      : "All prices are the job's own.",
  };
};

const itemsOf = (
  job: Job,
  design: PadDesign,
  q: PadQuantities,
  prices: PriceList,
  print: (value: number, kind: "length" | "volume" | "force") => string,
): Items => {
  const ordered = q.concrete * (1 + wasteOf(job));
  const cut = design.join !== "cast-with";
  const hours = (h: number): number => (h / 24) * prices.labour.value;
  const item = (
    key: Priced,
    what: string,
    quantity: number,
    shownAs: string,
    money = quantity * prices[key].value,
  ): Item => ({
    key,
    what,
    quantity,
    shownAs,
    money,
  });
  const work = (what: string, h: number): Item => item("labour", what, h / 24, `${h.toFixed(1)} h`, hours(h));
  const fee = cut && ordered < prices.fullLoad.value ? prices.shortLoad.value : 0;
  const truck = ordered * prices.concrete.value + fee + hours(HOURS.place * ordered);
  const count = Math.ceil(ordered / bagYield(prices.bagWeight.value) - 1e-9);
  const bags = count * prices.bag.value + hours(HOURS.bag * ordered);
  const by = cut && bags < truck ? "bags" : "truck";
  const concrete =
    by === "bags"
      ? [item("bag", "dry mix in bags", count, `${count} bags`), work("mixing and placing", HOURS.bag * ordered)]
      : [
          item("concrete", "ready-mixed concrete, with waste", ordered, print(ordered, "volume")),
          item("shortLoad", "small-load fee", fee > 0 ? 1 : 0, "1"),
          work("placing", HOURS.place * ordered),
        ];
  const sawn = cut ? q.perimeter : 0;
  const area = (value: number): string => areaWords(value, job.units);
  const fibre = design.reinforcement.kind === "fibre" ? q.fibreVolume * (design.reinforcement.dosage / 1e9) * G : 0;
  return {
    by,
    items: [
      item(
        "saw",
        "sawing the old slab",
        sawn,
        print(sawn, "length"),
        cut ? Math.max(sawn * prices.saw.value, prices.sawCall.value) : 0,
      ),
      item("breakOut", "breaking out", q.brokenArea, area(q.brokenArea)),
      item("removal", "carting away", q.brokenVolume + q.soil, print(q.brokenVolume + q.soil, "volume")),
      work("digging", (cut ? HOURS.dig : HOURS.digNew) * q.soil),
      item("baseCourse", "crushed stone", cut ? q.area * BASE_COURSE : 0, print(q.area * BASE_COURSE, "volume")),
      item("vapourSheet", "vapour retarder", cut ? q.area : 0, area(q.area)),
      item(
        "formwork",
        "isolation strip and forms",
        cut && design.join !== "dowelled" ? q.perimeter : 0,
        print(q.perimeter, "length"),
      ),
      item("dowel", "dowels, drilled and glued", q.dowels, `${q.dowels}`),
      item("bar", "bars", q.barWeight, print(q.barWeight, "force")),
      work("tying bars", HOURS.tie * q.barWeight),
      item("fibre", "fibre", fibre, print(fibre, "force")),
      ...concrete,
      work("finishing and curing", cut ? HOURS.finish * q.area : 0),
    ],
  };
};

const areaWords = (value: number, units: Job["units"]): string =>
  units === "si" ? `${fromBase(value, "m²").toFixed(1)} m²` : `${Math.round(fromBase(value, "ft²"))} ft²`;
