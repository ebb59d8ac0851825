/**
 * The load cases of a two-post lift: every way of standing on the arms that its floor must answer for, each named in
 * plain words. Heights: the base moment falls steadily with carriage height (docs/theory/frames.md), so the extremes
 * stand at pick-up and at full rise.
 */
import { isUnable, type Unable } from "../quantities/index.ts";
import type { BaseReactions } from "./base-load.ts";
import { boundReactions, type SoftBound } from "./bound-reactions.ts";
import type { ColumnFrame, LiftLoad, WorkForce } from "./column-frame.ts";
import { admissibleCrosswise } from "./pad-sharing.ts";

/** Where the pads of one kind of vehicle stand. */
export interface PadSet {
  readonly kind: "car" | "frame-truck";
  /** e: pad line to column centroid, mm */
  readonly reach: number;
  /** between front and rear pads, mm */
  readonly padSpacing: number;
  /** lifted weight with these pads, N; the duty's weight unless given */
  readonly weight?: number;
}

/** What a lift is used for. */
export interface LiftDuty {
  /** rated or actual lifted weight, N */
  readonly weight: number;
  readonly dynamicFactor: number;
  readonly pads: readonly PadSet[];
  /** carriage centre when the pads first bear, and at full rise, mm */
  readonly pickUpHeight: number;
  readonly fullRise: number;
  /** known offset of the centre of gravity from the column line, mm, + toward the door; 0 unless given */
  readonly foreAft?: number;
  /** share of the heavier side; 0.6 unless given */
  readonly unevenShare?: number;
  /** share of the heavier end of the pads; 0.6 unless given (the 60/40 and 40/60 of carrying-arm lifts) */
  readonly unevenPads?: number;
  /** hands and tools on the raised vehicle, N, in any direction; none unless given */
  readonly workForce?: number;
  /** above the floor, mm; at the carriage unless given */
  readonly workHeight?: number;
}

/** One named case with both base reactions. */
export interface LoadCase extends BaseReactions {
  /** stable, e.g. "car-pick-up" */
  readonly id: string;
  readonly name: string;
  /** "design" cases are judged; "information" is printed beside them and decides nothing by itself */
  readonly standing: "design" | "information";
  readonly pads: PadSet["kind"];
  readonly load: LiftLoad;
}

/** @param soft - the soft bound of an overhead-tied frame; of each quantity the worse of rigid and soft is kept */
export const loadCases = (frame: ColumnFrame, duty: LiftDuty, soft?: SoftBound): readonly LoadCase[] | Unable => {
  const cases: LoadCase[] = [];
  for (const pads of duty.pads) {
    for (const plan of plans(frame, duty, pads)) {
      const top = plan.tie === "missing" ? "free-standing" : frame.top;
      const reactions = boundReactions({ ...frame, top, reach: pads.reach }, plan.load, soft);
      if (isUnable(reactions)) return { ...reactions, place: `${reactions.place}, ${plan.name}` };
      const name = `${padWords[pads.kind]}, ${plan.name}`;
      const standing = plan.standing ?? "design";
      cases.push({ id: `${pads.kind}-${plan.id}`, name, standing, pads: pads.kind, load: plan.load, ...reactions });
    }
  }
  return cases;
};

const padWords = { car: "Car pads", "frame-truck": "Frame-truck pads" } as const;

interface CasePlan {
  readonly id: string;
  readonly name: string;
  readonly load: LiftLoad;
  readonly standing?: "information";
  readonly tie?: "missing";
}

const plans = (frame: ColumnFrame, duty: LiftDuty, pads: PadSet): CasePlan[] => {
  const tied = frame.top === "overhead-tied";
  const even: LiftLoad = {
    weight: pads.weight ?? duty.weight,
    dynamicFactor: duty.dynamicFactor,
    leftShare: 0.5,
    foreAft: duty.foreAft ?? 0,
    carriageHeight: duty.pickUpHeight,
  };
  const high: LiftLoad = { ...even, carriageHeight: duty.fullRise };
  const heavy = duty.unevenShare ?? 0.6;
  const shift = ((duty.unevenPads ?? 0.6) - 0.5) * pads.padSpacing;
  const percent = (share: number): string => `${Math.round(share * 100)}/${Math.round((1 - share) * 100)}`;
  const ends = percent(duty.unevenPads ?? 0.6);
  const uneven = (base: LiftLoad, id: string, where: string): CasePlan[] => [
    {
      id: `left-heavy${id}`,
      name: `${where}, ${percent(heavy)} to the left column`,
      load: { ...base, leftShare: heavy },
    },
    {
      id: `right-heavy${id}`,
      name: `${where}, ${percent(heavy)} to the right column`,
      load: { ...base, leftShare: 1 - heavy },
    },
  ];
  const { leftShare, foreAft } = even;
  const [, free] = admissibleCrosswise({ weight: even.weight, leftShare, foreAft, padSpacing: pads.padSpacing });
  const crosswise = Math.min(shift, free);
  return [
    { id: "pick-up", name: "just lifted, weight shared evenly", load: even },
    ...(tied ? [{ id: "full-rise", name: "at full rise, weight shared evenly", load: high }] : []),
    ...uneven(even, "", "just lifted"),
    ...(tied ? uneven(high, "-full-rise", "at full rise") : []),
    { id: "toward-door", name: `just lifted, ${ends} toward the door`, load: { ...even, foreAft: foreAft + shift } },
    { id: "toward-back", name: `just lifted, ${ends} toward the back`, load: { ...even, foreAft: foreAft - shift } },
    { id: "crosswise", name: `just lifted, ${ends} crosswise over the four pads`, load: { ...even, crosswise } },
    ...workPlans(high, duty),
    ...(tied
      ? [
          {
            id: "tie-missing",
            name: "just lifted, as if the overhead beam were missing",
            load: even,
            standing: "information",
            tie: "missing",
          } as const,
        ]
      : []),
    {
      id: "three-pads",
      name: "just lifted, one pad of four carrying nothing",
      load: { ...even, crosswise: free },
      standing: "information",
    },
  ];
};

const workPlans = (high: LiftLoad, duty: LiftDuty): CasePlan[] => {
  const F = duty.workForce ?? 0;
  if (F === 0) return [];
  const pull = (id: string, words: string, direction: WorkForce["direction"], force: number): CasePlan => ({
    id: `work-${id}`,
    name: `at full rise, pulled ${words} by hand`,
    load: {
      ...high,
      workForce: { force, direction, ...(duty.workHeight === undefined ? {} : { height: duty.workHeight }) },
    },
  });
  return [
    pull("door", "toward the door", "fore-aft", F),
    pull("back", "toward the back", "fore-aft", -F),
    pull("right", "to the right", "lateral", F),
    pull("left", "to the left", "lateral", -F),
  ];
};
