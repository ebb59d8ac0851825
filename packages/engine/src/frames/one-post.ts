/**
 * One-post lift: the whole weight hangs beside one column. P = φ W + Wc, M_in = φ W e, M_fa = φ W y + F h: the two-post
 * statics with the whole share on one free-standing column.
 */
import { isUnable, type Unable } from "../quantities/index.ts";
import { baseReactions } from "./base-reactions.ts";
import type { LiftLoad } from "./column-frame.ts";
import type { SupportCase } from "./support-case.ts";
import { type Side, toPlan } from "./to-plan.ts";

export interface OnePost {
  /** N */
  readonly weight: number;
  readonly dynamicFactor: number;
  /** column with carriage and arms, N */
  readonly columnWeight: number;
  /** e: vehicle's middle line to column centroid, mm */
  readonly reach: number;
  /** centre of gravity from the column line, mm, + toward the door */
  readonly foreAft: number;
  /** between front and rear pads, mm; 60/40 of it is the fore-aft case */
  readonly padSpacing: number;
  readonly fullRise: number;
  /** N, fore-aft or sideways at full rise; none unless given */
  readonly workForce?: number;
  /** which side of the vehicle the column stands on */
  readonly side: Side;
}

export const onePostCases = (lift: OnePost): readonly SupportCase[] | Unable => {
  const { reach, columnWeight, fullRise, side } = lift;
  const frame = { top: "free-standing", spacing: 3 * reach, columnWeight, reach, baseStiffness: "rigid" } as const;
  const load: LiftLoad = {
    weight: lift.weight,
    dynamicFactor: lift.dynamicFactor,
    leftShare: side === "left" ? 1 : 0,
    foreAft: lift.foreAft,
    carriageHeight: fullRise,
  };
  const shift = 0.1 * lift.padSpacing;
  const F = lift.workForce ?? 0;
  const pull = (force: number, direction: "fore-aft" | "lateral"): LiftLoad => ({
    ...load,
    workForce: { force, direction },
  });
  const plans: [string, string, LiftLoad][] = [
    ["centred", "rated load", load],
    ["toward-door", "60/40 toward the door", { ...load, foreAft: lift.foreAft + shift }],
    ["toward-back", "60/40 toward the back", { ...load, foreAft: lift.foreAft - shift }],
  ];
  if (F !== 0) {
    plans.push(["work-door", "at full rise, pulled toward the door by hand", pull(F, "fore-aft")]);
    plans.push(["work-back", "at full rise, pulled toward the back by hand", pull(-F, "fore-aft")]);
    plans.push([
      "work-out",
      "at full rise, pulled away from the column by hand",
      pull(side === "left" ? F : -F, "lateral"),
    ]);
  }
  const cases: SupportCase[] = [];
  for (const [id, name, at] of plans) {
    const found = baseReactions(frame, at);
    if (isUnable(found)) return found;
    const reaction = toPlan(found[side], side);
    const terms = Object.values(found.terms[side]);
    cases.push({ id, name, standing: "design", supports: [{ id: "column", x: 0, y: 0, reaction }], terms });
  }
  return cases;
};
