/** Made-up histories of anchors, for measuring how often the watch is right. All numbers invented. */
import type { Visit } from "@floorworthy/engine/bolts";
import { type Generator, normalQuantile } from "@floorworthy/engine/numerics";

export const kinds = ["relaxing", "slipping", "growing", "mixed"] as const;
export type Kind = (typeof kinds)[number];

export const disturbances = ["plain", "noisy", "missing visits"] as const;
export type Disturbance = (typeof disturbances)[number];

export interface History {
  readonly kind: Kind;
  readonly visits: readonly Visit[];
  /** true movement at the last visit, mm */
  readonly moved: number;
}

const usualDays = [30, 180, 365, 545, 730];

/** One anchor of a given kind, read `count` times over two years, nuts turned in steps of 5 degrees. */
export const inventHistory = (
  kind: Kind,
  disturbance: Disturbance,
  count: number,
  pitch: number,
  next: Generator,
): History => {
  const uniform = (low: number, high: number): number => low + (high - low) * next();
  const normal = (): number => normalQuantile((Math.floor(next() * 2 ** 32) + 0.5) / 2 ** 32);
  const degree = Math.PI / 180;
  const tau = 10 ** uniform(-1, 1.5);
  const settled = kind === "relaxing" || kind === "mixed" ? uniform(0.05, 0.4) : uniform(0, 0.1);
  const slipped = kind === "relaxing" ? 0 : uniform(0.8, 5);
  const onset = kind === "growing" ? uniform(0, 300) : 0;
  const power = kind === "growing" ? 2 : 1;
  const moved = (day: number): number =>
    (settled * Math.log(1 + day / tau)) / Math.log(1 + 730 / tau) +
    slipped * (Math.max(0, day - onset) / (730 - onset)) ** power;
  const days = usualDays.slice(0, count).map((day) => Math.round(day * uniform(0.9, 1.1)));
  const kept = disturbance === "missing visits" ? days.filter((_, i) => i >= count - 2 || next() > 0.4) : days;
  const error = (disturbance === "noisy" ? 10 : 5) * degree;
  let before = 0;
  const visits = kept.map((day): Visit => {
    const turn = ((moved(day) - moved(before)) / pitch) * 2 * Math.PI;
    before = day;
    const read = turn * (1 + 0.1 * normal()) + error * normal();
    return { day, nutTurn: Math.max(0, Math.round(read / degree / 5) * 5 * degree) };
  });
  return { kind, visits, moved: moved(kept[kept.length - 1]!) };
};
