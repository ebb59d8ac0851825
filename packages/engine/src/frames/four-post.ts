/**
 * Four-post lift: P = N + Wpost at each post. N by the lever rule, then rocked: locks and cables are never exactly
 * level, so one diagonal carries more. A worst post of 35 % of the weight is common practice, no source; the most that
 * statics admits, a centred weight on two posts, is told as information.
 * Sideways and fore-aft work forces: each post a cantilever with its share, F/4 at runway height.
 */
import type { Unable } from "../quantities/index.ts";
import { atCorners, rockedLoads, standsOutside, worstShareTerm } from "./four-supports.ts";
import { type FourPads, type PadLoads, padLoads } from "./pad-sharing.ts";
import type { SupportCase } from "./support-case.ts";

export interface FourPost {
  /** lifted weight with the runways, N */
  readonly weight: number;
  readonly dynamicFactor: number;
  /** of one post, N */
  readonly postWeight: number;
  /** between post centres across and along, mm */
  readonly width: number;
  readonly length: number;
  /** centre of gravity from the middle of the posts, mm: to the right, toward the door */
  readonly offsetX: number;
  readonly offsetY: number;
  /** N, in any direction at runway height; none unless given */
  readonly workForce?: number;
  /** runway height at full rise, mm */
  readonly runwayHeight: number;
  /** share of the weight on the worst post; 0.35 unless given */
  readonly worstShare?: number;
}

export const fourPostCases = (lift: FourPost): readonly SupportCase[] | Unable => {
  const four: FourPads = {
    weight: lift.dynamicFactor * lift.weight,
    leftShare: 0.5 - lift.offsetX / lift.width,
    foreAft: lift.offsetY,
    padSpacing: lift.length,
  };
  const tips = standsOutside(four, "four-post lift");
  if (tips !== undefined) return tips;
  const make = (
    id: string,
    name: string,
    loads: PadLoads,
    standing: SupportCase["standing"] = "design",
    [Vx, Vy]: readonly [number, number] = [0, 0],
  ): SupportCase => ({
    id,
    name,
    standing,
    supports: atCorners(loads, lift.width, lift.length, (N) => ({
      P: N + lift.postWeight,
      Mx: Vy * lift.runwayHeight,
      My: Vx * lift.runwayHeight,
      Vx,
      Vy,
    })),
    terms: [worstShareTerm(loads, four.weight, "lever rule and rocking of four supports")],
  });
  const level = padLoads(four, 0);
  const share = lift.worstShare ?? 0.35;
  const F = (lift.workForce ?? 0) / 4;
  return [
    make("level", "all posts level", level),
    make("diagonal-left-front", "rocking on left front and right rear", rockedLoads(four, "left-front", share)),
    make("diagonal-left-rear", "rocking on left rear and right front", rockedLoads(four, "left-rear", share)),
    ...(F === 0
      ? []
      : [
          make("work-right", "at full rise, pushed to the right by hand", level, "design", [F, 0]),
          make("work-left", "at full rise, pushed to the left by hand", level, "design", [-F, 0]),
          make("work-door", "at full rise, pushed toward the door by hand", level, "design", [0, F]),
          make("work-back", "at full rise, pushed toward the back by hand", level, "design", [0, -F]),
        ]),
    make("two-posts", "one diagonal carrying all it can", rockedLoads(four, "left-front", 1), "information"),
  ];
};
