/**
 * A number with its birth certificate. Everything a person is shown is a `Term` or a `Check`, so that it can be
 * unfolded down to the tape measure.
 */
import type { Unit } from "./units.ts";

/** One number of a calculation: what it is, where its formula stands, and the numbers it was made of. */
export interface Term {
  /** as printed in the source, e.g. `Nb`, `hef` */
  readonly symbol: string;
  /** in plain words, e.g. "basic breakout strength of one anchor" */
  readonly words: string;
  /** in `unit` (not necessarily the base unit: code terms speak the units of their page) */
  readonly value: number;
  readonly unit: Unit;
  /** e.g. "ACI 318-19 17.6.2.2.1", or "common practice, no source" */
  readonly clause?: string;
  /** in symbols, e.g. "kc λa √f'c hef^1.5" */
  readonly formula?: string;
  /** the same with numbers in it, e.g. "17 × 1 × √3000 × 3.25^1.5" */
  readonly worked?: string;
  /** how the value is known, where it is an input: "measured", "documented p. 12", "assumed: ..." */
  readonly basis?: string;
  /** the terms this one was computed from */
  readonly from?: readonly Term[];
}

/** Demand against capacity. A floor that fails is a result (ratio > 1), not an error. */
export interface Check {
  /** stable, kebab-case, e.g. "anchor-breakout" */
  readonly id: string;
  readonly title: string;
  readonly demand: Term;
  readonly capacity: Term;
  /** demand / capacity; Infinity where the capacity is zero and something is asked of it */
  readonly ratio: number;
  readonly clause: string;
  /** what case, column or anchor governs, in words */
  readonly governs?: string;
}

/** A calculation that cannot answer: unsupported, not converged, outside a clause's range. A value, never thrown. */
export interface Unable {
  readonly unable: true;
  /** where, e.g. "contact: left base" */
  readonly place: string;
  /** in the engineer's words */
  readonly reason: string;
}

export const unable = (place: string, reason: string): Unable => ({ unable: true, place, reason });

export const isUnable = (value: unknown): value is Unable =>
  typeof value === "object" && value !== null && (value as { unable?: unknown }).unable === true;
