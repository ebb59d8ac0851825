/** What lies below the concrete, and what the cut-out takes out of the old floor. */
import { type Polygon, polygonArea } from "@floorworthy/engine/geometry";
import { baseCourse, vapourRetarder } from "@floorworthy/engine/orders";
import { printNumber } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { tape } from "../joint-plan/index.ts";
import { area, roundedUp, volume } from "./amounts.ts";
import { costOf } from "./costs.ts";
import type { OrderLine } from "./order.ts";
import type { PourPart } from "./pour-parts.ts";
import { COMPACTION, soldAs, tradeLength } from "./practice.ts";

const loose = (mm3: number, job: Job, what: string, thick: number, mm2: number): OrderLine => {
  const takes = volume("Vb", `${what}, loose`, mm3, job.units, {
    formula: "A × t / (1 − compaction)",
    clause: "common practice, no source",
    from: [area("A", "area", mm2, job.units)],
  });
  return {
    id: "base-course",
    group: "ground",
    what: "Crushed stone",
    takes,
    buy: roundedUp(takes, 0.5, "crushed stone, loose"),
    sold: "",
    note: `${tape(thick, job.units)} compacted; it shrinks by ${printNumber(100 * COMPACTION, 0)} %. Damp, no mud, no frost.`,
    cost: costOf(job, "baseCourse", mm3 * (1 - COMPACTION)),
  };
};

const retarder = (job: Job, outlines: readonly Polygon[]): OrderLine => {
  const { retarderRoll } = soldAs[job.units];
  const mm2 = outlines.reduce(
    (sum, o) => sum + vapourRetarder(o, retarderRoll, tradeLength("retarderLap", job.units)),
    0,
  );
  const takes = area("Av", "vapour retarder, laps counted", mm2, job.units, {
    formula: "A × roll / (roll − lap)",
    clause: "ASTM E1643, from memory: 6-in laps",
  });
  return {
    id: "vapour-retarder",
    group: "ground",
    what: "Vapour retarder",
    takes,
    buy: roundedUp(takes, job.units === "si" ? 5 : 50, "vapour retarder"),
    sold: "",
    note: `Laps of ${tape(tradeLength("retarderLap", job.units), job.units)}, taped; turned up at walls and pipes. As the rest of the floor has it.`,
    cost: costOf(job, "vapourSheet", mm2),
  };
};

const foam = (job: Job, parts: readonly PourPart[]): readonly OrderLine[] => {
  const { foam: where } = job.floor.ground;
  if (!where.known || where.value === "none") return [];
  const under = parts.filter(({ outline }) => where.value === "everywhere" || outline === undefined);
  const mm2 = under.reduce((sum, part) => sum + part.area, 0);
  if (mm2 <= 0) return [];
  const takes = area("Af", "foam board", mm2, job.units);
  return [
    {
      id: "foam",
      group: "ground",
      what: "Foam board",
      takes,
      buy: roundedUp(takes, job.units === "si" ? 1 : 32, "foam board"),
      sold: "",
      note:
        where.value === "everywhere"
          ? "Thickness as your drawing. Foam under a pad creeps: leave it out there, or use a kind rated for the lasting load."
          : "Thickness as your drawing; left out under the pads, its edges sloped.",
      cost: undefined,
    },
  ];
};

/** Stone, sheet and foam of a new floor. */
export const newFloorLines = (job: Job, outline: Polygon, parts: readonly PourPart[]): readonly OrderLine[] => {
  const { base } = job.floor.ground;
  const mm2 = polygonArea(outline);
  const thick = tradeLength("baseUnderSlab", job.units);
  return [
    ...(base.known && base.value === "none"
      ? []
      : [loose(baseCourse(mm2, thick, COMPACTION), job, "base course under the floor", thick, mm2)]),
    retarder(job, [outline]),
    ...foam(job, parts),
  ];
};

/** Stone and sheet under cut-out pads, and what is broken out and carted away. */
export const cutOutLines = (job: Job, parts: readonly PourPart[]): readonly OrderLine[] => {
  const pads = parts.filter((part): part is PourPart & { outline: Polygon } => part.outline !== undefined);
  if (pads.length === 0) return [];
  const mm2 = pads.reduce((sum, part) => sum + part.area, 0);
  const thick = tradeLength("baseUnderCutOut", job.units);
  const dug = pads.reduce((sum, part) => sum + (part.volume ?? 0), 0) + mm2 * thick;
  const broken = area("A", "old slab to break out", mm2, job.units);
  const carted = volume("Vd", "concrete and soil to cart away, as it lies", dug, job.units, {
    formula: "concrete poured + base course",
  });
  return [
    loose(baseCourse(mm2, thick, COMPACTION), job, "base course under the pads", thick, mm2),
    retarder(
      job,
      pads.map(({ outline }) => outline),
    ),
    {
      id: "break-out",
      group: "old slab",
      what: "Break out the old slab",
      takes: broken,
      buy: broken,
      sold: "",
      note: "Locate tubes, tendons and private lines before the first cut.",
      cost: costOf(job, "breakOut", mm2),
    },
    {
      id: "cart-away",
      group: "old slab",
      what: "Cart away",
      takes: carted,
      buy: carted,
      sold: "",
      note: "Loose it takes about a third more room.",
      cost: costOf(job, "removal", dug),
    },
  ];
};
