import type { Point, Polygon } from "@floorworthy/engine/geometry";
import type { Check, Term, Unable } from "@floorworthy/engine/quantities";
import type { Survey } from "./facts/survey-answer.ts";

/** What to do. Words of the trade; the page decides, the margin advises, a stop overrides both. */
export type Outcome =
  | "accept"
  | "accept-if"
  | "lighter-lift"
  | "shift"
  | "pour"
  | "wait"
  | "refer"
  | "refuse"
  | "out-of-service"
  | "hold";

/** The whole answer for one job. Plain data: the same in the terminal, on the page, on paper and as JSON. */
export interface Assessment {
  readonly format: 1;
  readonly title: string;
  readonly outcome: Outcome;
  /** the outcome in one sentence a customer understands */
  readonly sentence: string;
  /** why, most important first; never empty */
  readonly reasons: readonly string[];
  /** what must be done or shown before the outcome holds */
  readonly conditions: readonly string[];
  readonly stops: readonly Stop[];
  readonly page: PageAnswer;
  readonly margin: MarginAnswer;
  /** what the readings, cores, cracks and distances come to, beside the page's lines; left out under a stop */
  readonly survey?: Survey;
  readonly missing: readonly MissingFact[];
  /** the cheapest set of open questions whose answers settle the outcome; undefined where none is open */
  readonly settling?: Settling | undefined;
  readonly remedies: readonly Remedy[];
  readonly layout: Layout;
  readonly cautions: readonly string[];
}

/** Something that ends the arithmetic: who must look at it instead. */
export interface Stop {
  readonly id: string;
  readonly outcome: "refuse" | "refer" | "hold" | "out-of-service";
  readonly reason: string;
  /** what to do about it, in words */
  readonly next: string;
}

/** The maker's page, line by line. */
export interface PageAnswer {
  readonly verdict: "meets" | "fails" | "not-shown" | "not-judged";
  readonly lines: readonly PageLine[];
}

/** Where the maker's manual says it. */
export interface ManualLine {
  readonly document?: string;
  readonly page?: string;
  /** as printed */
  readonly line?: string;
  readonly picture?: string;
}

export interface PageLine {
  readonly id: string;
  readonly title: string;
  readonly result: "meets" | "fails" | "not-shown" | "not-asked";
  /** what the maker asks, ready to print, e.g. "at least 4 1/4 in" */
  readonly asked: string;
  /** what is there, ready to print, e.g. "5.65 in at the left base" */
  readonly found: string;
  readonly why: string;
  readonly demand?: Term;
  readonly capacity?: Term;
  /** the line of the manual that asks it, where the lift's sheet names it */
  readonly manual?: ManualLine;
}

/** The margin: mechanics and published codes, as advice. Never computed where a stop says so. */
export interface MarginAnswer {
  readonly verdict: "ample" | "enough" | "thin" | "short" | "not-computed";
  readonly sentence: string;
  /** worst end of every uncertain fact */
  readonly checks: readonly MarginCheck[];
  /** what the same checks give at the best end */
  readonly best: readonly { readonly id: string; readonly ratio: number }[];
  /** printed beside, never counted: e.g. as if the tie were missing */
  readonly information: readonly MarginCheck[];
  readonly cases: readonly CaseReactions[];
  /** how far each column's head leans under the counted load that leans it most, base plate and slab together */
  readonly lean: readonly Term[];
  readonly unable: readonly Unable[];
}

export interface MarginCheck extends Check {
  readonly group: "anchors" | "slab" | "ground" | "base plate" | "pad";
  readonly concrete?: "cracked" | "uncracked";
  /** "limit": counts; "advice": another method beside it */
  readonly weight: "limit" | "advice";
}

/** Loads of both bases in one case, N and N·mm, plan axes. */
export interface CaseReactions {
  readonly name: string;
  readonly counted: "counted" | "information";
  readonly bases: readonly {
    readonly side: string;
    readonly P: number;
    readonly Mx: number;
    readonly My: number;
    readonly Vx: number;
    readonly Vy: number;
    readonly terms: readonly Term[];
  }[];
}

export interface MissingFact {
  readonly id: string;
  /** e.g. "strength of the slab" */
  readonly what: string;
  readonly how: string;
  /** e.g. "$0, an hour" */
  readonly cost: string;
  /** the outcome at the worst and the best value */
  readonly worst: Outcome;
  readonly best: Outcome;
  readonly flips: "flips" | "keeps";
  /** US, 2020s, common practice, no source: nothing, up to about $150, a laboratory or a scan, an engineer */
  readonly costClass: "free" | "small" | "test" | "engineer";
  /** what finding out does to the floor */
  readonly risk: "none" | "small-hole" | "core-hole";
}

/** Open questions that, answered together, leave nothing that could still turn the outcome. */
export interface Settling {
  /** ids of missing facts, cheapest first; empty where no answer can turn the outcome */
  readonly facts: readonly string[];
  /** the outcome with these facts at their worst and at their best */
  readonly outcomeWorst: Outcome;
  readonly outcomeBest: Outcome;
  readonly sentence: string;
}

export interface Remedy {
  readonly id: string;
  readonly title: string;
  readonly detail: string;
  readonly volume?: Term;
  readonly terms: readonly Term[];
}

/** The resolved plan: what the screen, the paper and the calculation all read. mm, plan axes. */
export interface Layout {
  readonly outline: Polygon | undefined;
  readonly bases: readonly PlacedBase[];
  readonly zones: readonly {
    readonly name: string;
    readonly outline: Polygon;
    readonly thickness: number | undefined;
    readonly state: "standing" | "proposed";
    readonly kind: string;
  }[];
}

export interface PlacedBase {
  readonly side: "left" | "right" | string;
  readonly centre: Point;
  readonly outline: Polygon;
  readonly anchors: readonly { readonly id: string; readonly at: Point }[];
}
