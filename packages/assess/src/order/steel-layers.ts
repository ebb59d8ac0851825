/** Which layers of bars a pour gets: the job's own, or the trade's. */
import type { Polygon } from "@floorworthy/engine/geometry";
import type { Bars, Job, Zone } from "@floorworthy/job";
import type { Assessment } from "../assessment.ts";
import { type BarMat, matAlong } from "./bar-mats.ts";
import { type Bar, barOf } from "./bar-sizes.ts";
import { clearWindow, windowDepth } from "./clear-windows.ts";
import { HEAVY, soldAs, tradeLength } from "./practice.ts";

export interface SteelLayers {
  readonly mats: readonly BarMat[];
  /** `job`: as the job says; `practice`: the trade's usual steel stands in; `none` */
  readonly basis: "job" | "practice" | "none";
  readonly warnings: readonly string[];
}

interface Layer {
  readonly where: string;
  readonly outline: Polygon;
  readonly bar: Bar;
  readonly spacing: number;
  readonly depth: number | undefined;
  readonly directions: readonly ("x" | "y")[];
}

const isThick = ({ kind }: Zone): boolean => kind === "pad" || kind === "strip" || kind === "slab";

/** A layer written in the job belongs to the slab where it lies within the slab's depth, else to the thick parts. */
const writtenLayers = (job: Job, zones: readonly Zone[], outline: Polygon | undefined) => {
  const { floor } = job;
  const slab = floor.thickness.known ? floor.thickness.value : 0;
  const unread: string[] = [];
  const layers = floor.bars.flatMap(({ size, spacing, depth, direction }: Bars): readonly Layer[] => {
    const down = depth.known ? depth.value : undefined;
    const inSlab = down === undefined || down < slab;
    // the bars of an old slab are there already
    if (inSlab && floor.state === "standing") return [];
    const bar = barOf(size);
    if (!bar) {
      unread.push(`The bar size "${size}" is not one this order knows: add those bars by hand.`);
      return [];
    }
    const layer = {
      bar,
      spacing: spacing.known ? spacing.value : tradeLength("barSpacing", job.units),
      depth: down,
      directions: direction === "both" ? (["x", "y"] as const) : [direction],
    };
    return inSlab && outline
      ? [{ ...layer, where: "slab", outline }]
      : zones.filter(isThick).map((zone) => ({ ...layer, where: zone.name || zone.kind, outline: zone.outline }));
  });
  return { layers, unread };
};

/** Both mats of the thick parts, as the trade lays them. */
const usualLayers = (job: Job, zones: readonly Zone[]): readonly Layer[] => {
  const { rated } = job.lift;
  const heavy = rated.known && rated.value >= HEAVY - 1e-6;
  const bar = barOf(job.units === "si" ? (heavy ? "16 mm" : "12 mm") : heavy ? "#5" : "#4")!;
  return zones.filter(isThick).flatMap((zone) => {
    const layer = {
      where: zone.name || zone.kind,
      outline: zone.outline,
      bar,
      spacing: tradeLength("barSpacing", job.units),
      directions: ["x", "y"] as const,
    };
    const top = tradeLength("topDepth", job.units);
    const bottom = zone.thickness.known ? zone.thickness.value - tradeLength("cover", job.units) : undefined;
    return [
      { ...layer, depth: top },
      ...(bottom === undefined || bottom > top + 75 ? [{ ...layer, depth: bottom }] : []),
    ];
  });
};

export const steelLayers = (job: Job, { layout }: Assessment, zones: readonly Zone[]): SteelLayers => {
  const outline = job.floor.state === "to-be-poured" ? layout.outline : undefined;
  const written = writtenLayers(job, zones, outline);
  const { reinforcement } = job.floor;
  const none = job.floor.state === "to-be-poured" && reinforcement.known && reinforcement.value === "none";
  const usual = written.layers.length > 0 || none ? [] : usualLayers(job, zones);
  const layers = [...written.layers, ...usual];
  const reach = windowDepth(job);
  const mats = layers.flatMap(({ directions, ...layer }) => {
    const reached = reach === undefined || layer.depth === undefined || layer.depth - layer.bar.diameter / 2 < reach;
    const windows = reached ? layout.bases.map((base) => clearWindow(base, job.units)) : [];
    return directions.map((direction) =>
      matAlong(direction, { ...layer, windows, stock: soldAs[job.units].bar, cover: tradeLength("cover", job.units) }),
    );
  });
  return {
    mats,
    basis: written.layers.length > 0 ? "job" : usual.length > 0 ? "practice" : "none",
    warnings: [
      ...written.unread,
      ...(none && zones.some(isThick)
        ? [
            "The job says no steel; thick parts without steel crack where they like. Top and bottom bars are the trade's habit.",
          ]
        : []),
      ...(usual.length > 0 && written.layers.length === 0
        ? ["No bars are stated in the job; the trade's usual mats stand in: let whoever answers for the design say."]
        : []),
    ],
  };
};
