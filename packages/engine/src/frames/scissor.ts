/**
 * Scissor lift on two frames, each resting on its two ends (or on four pads): lever rule, 60/40 along and across, and
 * rocking of four stiff supports. One end of each frame slides, so the floor takes no thrust from the legs; a work force
 * at height tips weight from one pair of ends to the other and its shear stays at the fixed ends.
 */
import type { Unable } from "../quantities/index.ts";
import { atCorners, rockedLoads, standsOutside, worstShareTerm } from "./four-supports.ts";
import { type FourPads, type PadLoads, padLoads } from "./pad-sharing.ts";
import type { SupportCase } from "./support-case.ts";

export interface Scissor {
  /** lifted weight, N */
  readonly weight: number;
  readonly dynamicFactor: number;
  /** the lift itself, N */
  readonly ownWeight: number;
  /** between the frames, and between the ends of a frame, mm */
  readonly width: number;
  readonly length: number;
  /** centre of gravity from the middle, mm: to the right, toward the door */
  readonly offsetX: number;
  readonly offsetY: number;
  readonly fullRise: number;
  /** which ends do not slide; the shear of a work force goes there */
  readonly fixedEnds: "front" | "rear";
  /** N; none unless given */
  readonly workForce?: number;
}

export const scissorCases = (lift: Scissor): readonly SupportCase[] | Unable => {
  const four: FourPads = {
    weight: lift.dynamicFactor * lift.weight,
    leftShare: 0.5 - lift.offsetX / lift.width,
    foreAft: lift.offsetY,
    padSpacing: lift.length,
  };
  const tips = standsOutside(four, "scissor lift");
  if (tips !== undefined) return tips;
  const clause = "lever rule; 60/40 and 35 % common practice, no source";
  const make = (
    id: string,
    name: string,
    loads: PadLoads,
    [Fx, Fy]: readonly [number, number] = [0, 0],
  ): SupportCase => ({
    id,
    name,
    standing: "design",
    supports: atCorners(loads, lift.width, lift.length, (N, corner) => {
      const fixed = corner.endsWith(lift.fixedEnds) ? 0.5 : 0;
      const tip = ((corner.endsWith("rear") ? 1 : -1) * Fy * lift.fullRise) / (2 * lift.length);
      const side = ((corner.startsWith("right") ? 1 : -1) * Fx * lift.fullRise) / (2 * lift.width);
      return { P: N + lift.ownWeight / 4 + tip + side, Mx: 0, My: 0, Vx: fixed * Fx, Vy: fixed * Fy };
    }),
    terms: [worstShareTerm(loads, four.weight, clause)],
  });
  const level = padLoads(four, 0);
  const along = 0.1 * lift.length;
  const shifted = (y: number): PadLoads => padLoads({ ...four, foreAft: lift.offsetY + y }, 0);
  const uneven = (leftShare: number): PadLoads => padLoads({ ...four, leftShare }, 0);
  const F = lift.workForce ?? 0;
  return [
    make("level", "weight as measured", level),
    make("toward-door", "60/40 toward the door", shifted(along)),
    make("toward-back", "60/40 toward the back", shifted(-along)),
    make("left-heavy", "60/40 to the left frame", uneven(0.6)),
    make("right-heavy", "60/40 to the right frame", uneven(0.4)),
    make("diagonal-left-front", "rocking on left front and right rear", rockedLoads(four, "left-front", 0.35)),
    make("diagonal-left-rear", "rocking on left rear and right front", rockedLoads(four, "left-rear", 0.35)),
    ...(F === 0
      ? []
      : [
          make("work-door", "at full rise, pushed toward the door by hand", level, [0, F]),
          make("work-back", "at full rise, pushed toward the back by hand", level, [0, -F]),
          make("work-right", "at full rise, pushed to the right by hand", level, [F, 0]),
          make("work-left", "at full rise, pushed to the left by hand", level, [-F, 0]),
        ]),
  ];
};
