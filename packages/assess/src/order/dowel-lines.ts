/** Dowels between a cut-out pad and the old slab. */
import { distance, sides } from "@floorworthy/engine/geometry";
import { type BarSize, barDiameter, dowelGlue } from "@floorworthy/engine/orders";
import { dowelFitsSlab } from "@floorworthy/engine/pads";
import { printNumber } from "@floorworthy/engine/quantities";
import type { Job, Zone } from "@floorworthy/job";
import type { Facts } from "../facts/facts.ts";
import { tape } from "../joint-plan/index.ts";
import { count } from "./amounts.ts";
import { costOf } from "./costs.ts";
import type { OrderLine } from "./order.ts";
import { dowelPractice, HEAVY } from "./practice.ts";

/** Bars along one side, none near a corner. */
export const dowelsAlong = (length: number): number => {
  const room = length - 2 * dowelPractice.fromCorner;
  return room < 0 ? 0 : Math.floor(room / dowelPractice.spacing + 1e-9) + 1;
};

/** Thinnest the old slab is at any base, mm; its name where nobody measured. */
const oldSlab = ({ floor }: Job, { thickness }: Facts): number | undefined => {
  const found = thickness.flatMap(({ thickness: t, zone }) => (t === undefined || zone ? [] : [t]));
  return found.length > 0 ? Math.min(...found) : floor.thickness.known ? floor.thickness.value : undefined;
};

export const dowelLines = (
  job: Job,
  zones: readonly Zone[],
  facts: Facts,
): { readonly lines: readonly OrderLine[]; readonly warnings: readonly string[] } => {
  const tied = zones.filter(({ tied: t }) => t.known && t.value === "dowelled");
  if (job.floor.state !== "standing" || tied.length === 0) return { lines: [], warnings: [] };
  const slab = oldSlab(job, facts);
  const { rated } = job.lift;
  const wished: readonly BarSize[] = rated.known && rated.value >= HEAVY - 1e-6 ? ["#5", "#4"] : ["#4"];
  const size = slab === undefined ? undefined : wished.find((s) => dowelFitsSlab(barDiameter(s), slab) === "fits");
  if (!size)
    return {
      lines: [],
      warnings: [
        slab === undefined
          ? "Dowels are wanted, but nobody has measured the old slab: no dowel is ordered."
          : `The old slab counts ${tape(slab, job.units)}: too thin for dowels (at least 4 in and eight times the bar). Make the pad big enough to stand alone.`,
      ],
    };
  const lengths = tied.flatMap(({ outline }) => sides(outline).map(({ a, b }) => distance(a, b)));
  const n = lengths.reduce((sum, length) => sum + dowelsAlong(length), 0);
  const d = barDiameter(size);
  const glue = dowelGlue(n, d, d + dowelPractice.holeOver, dowelPractice.embedded, dowelPractice.glueWaste);
  const cartridges = Math.ceil(glue / dowelPractice.cartridge - 1e-9);
  return {
    lines: [
      {
        id: "dowels",
        group: "old slab",
        what: `Dowels ${size} × ${tape(dowelPractice.length, job.units)}`,
        takes: count("n", "dowels round the cut-outs", n, {
          formula: "Σ over sides of floor((side − 2 × 6 in) / 12 in) + 1",
          clause: "common practice, no source",
          worked: lengths.map((length) => dowelsAlong(length)).join(" + "),
        }),
        buy: count("n", "dowels", n),
        sold: "pieces",
        note: `At mid-depth, ${tape(dowelPractice.spacing, job.units)} apart, none within ${tape(dowelPractice.fromCorner, job.units)} of a corner; ${tape(dowelPractice.embedded, job.units)} glued into the old slab, hole 1/8 in over the bar, blown and brushed clean.`,
        cost: costOf(job, "dowel", n),
      },
      {
        id: "dowel-glue",
        group: "old slab",
        what: "Epoxy for the dowels",
        takes: count("V", `mL of epoxy, ${printNumber(100 * dowelPractice.glueWaste, 0)} % lost`, glue / 1000, {
          formula: "n π (hole² − bar²)/4 × depth × (1 + lost)",
        }),
        buy: count("n", "cartridges of 300 mL (10 fl oz)", cartridges),
        sold: "cartridges of 300 mL",
        note: "In the price of a dowel. Size of cartridge invented: look at yours, and at its temperature limits.",
        cost: undefined,
      },
    ],
    warnings: [],
  };
};
