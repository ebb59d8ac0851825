/** Dowels between a cut-out pad and the old slab. */
import { distance, sides } from "@floorworthy/engine/geometry";
import { dowelGlue } from "@floorworthy/engine/orders";
import { dowelFitsSlab } from "@floorworthy/engine/pads";
import { printNumber } from "@floorworthy/engine/quantities";
import type { Job, Zone } from "@floorworthy/job";
import type { Facts } from "../facts/facts.ts";
import { tape } from "../joint-plan/index.ts";
import { count } from "./amounts.ts";
import { type Bar, barOf } from "./bar-sizes.ts";
import { costOf } from "./costs.ts";
import type { OrderLine } from "./order.ts";
import { dowelGluePractice, HEAVY, tradeLength } from "./practice.ts";

/** Bars along one side, none near a corner. */
const dowelsAlong = (length: number, units: Job["units"]): number => {
  const room = length - 2 * tradeLength("dowelFromCorner", units);
  return room < 0 ? 0 : Math.floor(room / tradeLength("dowelSpacing", units) + 1e-9) + 1;
};

/** Thinnest the old slab is at any base, mm; its name where nobody measured. */
const oldSlab = ({ floor }: Job, { thickness }: Facts): number | undefined => {
  const found = thickness.flatMap(({ thickness: t, zone }) => (t === undefined || zone ? [] : [t]));
  return found.length > 0 ? Math.min(...found) : floor.thickness.known ? floor.thickness.value : undefined;
};

/** Sizes to try, thickest first. */
const sizesFor = ({ lift: { rated }, units }: Job): readonly string[] => {
  const heavy = rated.known && rated.value >= HEAVY - 1e-6;
  const [large, small] = units === "si" ? ["16 mm", "12 mm"] : ["#5", "#4"];
  return heavy ? [large!, small!] : [small!];
};

const glueLine = (job: Job, n: number, { diameter: d }: Bar): OrderLine => {
  const { waste, cartridge } = dowelGluePractice;
  const hole = d + tradeLength("dowelHoleOver", job.units);
  const glue = dowelGlue(n, d, hole, tradeLength("dowelEmbedded", job.units), waste);
  return {
    id: "dowel-glue",
    group: "old slab",
    what: "Epoxy for the dowels",
    takes: count("V", `mL of epoxy, ${printNumber(100 * waste, 0)} % lost`, glue / 1000, {
      formula: "n π (hole² − bar²)/4 × depth × (1 + lost)",
    }),
    buy: count("n", "cartridges of 300 mL (10 fl oz)", Math.ceil(glue / cartridge - 1e-9)),
    sold: "cartridges of 300 mL",
    note: "In the price of a dowel. Size of cartridge invented: look at yours, and at its temperature limits.",
    cost: undefined,
  };
};

const dowelLine = (job: Job, lengths: readonly number[], { size }: Bar): OrderLine => {
  const { units } = job;
  const each = lengths.map((length) => dowelsAlong(length, units));
  const n = each.reduce((sum, k) => sum + k, 0);
  const t = (what: Parameters<typeof tradeLength>[0]) => tape(tradeLength(what, units), units);
  return {
    id: "dowels",
    group: "old slab",
    what: `Dowels ${size} × ${t("dowelLength")}`,
    takes: count("n", "dowels round the cut-outs", n, {
      formula: `Σ over sides of floor((side − 2 × ${t("dowelFromCorner")}) / ${t("dowelSpacing")}) + 1`,
      clause: "common practice, no source",
      worked: each.join(" + "),
    }),
    buy: count("n", "dowels", n),
    sold: "pieces",
    note: `At mid-depth, ${t("dowelSpacing")} apart, none within ${t("dowelFromCorner")} of a corner; ${t("dowelEmbedded")} glued into the old slab, hole ${t("dowelHoleOver")} over the bar, blown and brushed clean.`,
    cost: costOf(job, "dowel", n),
  };
};

/** Dowels where the job ties a pad to the old slab with them, or why none can be set. */
export const dowelLines = (
  job: Job,
  zones: readonly Zone[],
  facts: Facts,
): { readonly lines: readonly OrderLine[]; readonly warnings: readonly string[] } => {
  const tied = zones.filter(({ tied: t }) => t.known && t.value === "dowelled");
  if (job.floor.state !== "standing" || tied.length === 0) return { lines: [], warnings: [] };
  const slab = oldSlab(job, facts);
  if (slab === undefined)
    return {
      lines: [],
      warnings: ["Dowels are wanted, but nobody has measured the old slab: no dowel is ordered."],
    };
  const bar = sizesFor(job)
    .flatMap((size) => barOf(size) ?? [])
    .find(({ diameter }) => dowelFitsSlab(diameter, slab) === "fits");
  if (!bar)
    return {
      lines: [],
      warnings: [
        `The old slab counts ${tape(slab, job.units)}: too thin for dowels (at least ${tape(job.units === "si" ? 102 : 101.6, job.units)} and eight times the bar). Make the pad big enough to stand alone.`,
      ],
    };
  const lengths = tied.flatMap(({ outline }) => sides(outline).map(({ a, b }) => distance(a, b)));
  const dowels = dowelLine(job, lengths, bar);
  return { lines: [dowels, glueLine(job, dowels.buy.value, bar)], warnings: [] };
};
