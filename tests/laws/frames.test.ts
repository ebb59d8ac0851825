/** Laws of the two-post frame, and the frame against an independent stiffness-method program. */
import {
  admissibleCrosswise,
  baseMomentByHeight,
  baseReactions,
  boundReactions,
  type ColumnFrame,
  type LiftDuty,
  type LiftLoad,
  loadCases,
  padLoads,
  toPlan,
  toPlateAxes,
  turnReaction,
  twoPostSupports,
} from "@floorworthy/engine/frames";
import { isUnable, type Unable } from "@floorworthy/engine/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { solvePlaneFrame } from "./plane-frame.ts";

const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const close = (a: number, b: number, scale: number, within = 1e-9): void =>
  expect(Math.abs(a - b)).toBeLessThanOrEqual(within * scale);

const H = 3700;
const rigid: ColumnFrame = {
  top: "overhead-tied",
  spacing: 3200,
  tieHeight: H,
  columnWeight: 2900,
  reach: 950,
  baseStiffness: "rigid",
};
const soft: ColumnFrame = { ...rigid, baseStiffness: 6e9, columnEI: 8e12, strutEA: 4e8 };
const even: LiftLoad = { weight: 44_000, dynamicFactor: 1.15, leftShare: 0.5, foreAft: 0, carriageHeight: 700 };
const applied = 1.15 * 22_000 * 950;

const frames: fc.Arbitrary<ColumnFrame> = fc.record({
  top: fc.constant("overhead-tied" as const),
  spacing: real(2500, 4500),
  tieHeight: real(3000, 5000),
  columnWeight: real(1000, 8000),
  reach: real(600, 1200),
  baseStiffness: fc.oneof(fc.constant("rigid" as const), real(1e8, 1e12)),
  columnEI: real(1e12, 1e14),
  strutEA: fc.oneof(fc.constant("rigid" as const), real(1e7, 1e9)),
});
const loads: fc.Arbitrary<LiftLoad> = fc.record({
  weight: real(10_000, 90_000),
  dynamicFactor: real(1, 1.25),
  leftShare: real(0, 1),
  foreAft: real(-400, 400),
  carriageHeight: real(0, 2900),
  workForce: fc.record({
    force: real(-1500, 1500),
    direction: fc.constantFrom("fore-aft" as const, "lateral" as const),
  }),
});

describe("against an independent plane-frame program", () => {
  /** base moment (inward) and shear of both columns, and the strut force, from beam members */
  const byMembers = (frame: ColumnFrame, load: LiftLoad) => {
    const [L, tie, a] = [frame.spacing, frame.tieHeight!, load.carriageHeight];
    const base = ["fixed", "fixed", frame.baseStiffness === "rigid" ? "fixed" : frame.baseStiffness] as const;
    const open = ["free", "free", "free"] as const;
    const strutEA = typeof frame.strutEA === "number" ? frame.strutEA : 3e13;
    const column = { EA: 1e13, EI: frame.columnEI! };
    const couple = (share: number): number => load.dynamicFactor * share * load.weight * frame.reach;
    const lateral = load.workForce?.direction === "lateral" ? load.workForce.force : 0;
    const r = load.leftShare;
    const { moves, reactions } = solvePlaneFrame({
      nodes: [0, L].flatMap((x) => [0, a, tie].map((z) => ({ x, z }))),
      members: [0, 3]
        .flatMap((k) => [
          { from: k, to: k + 1, ...column },
          { from: k + 1, to: k + 2, ...column },
        ])
        .concat({ from: 2, to: 5, EA: strutEA, EI: 0 }),
      supports: [base, open, open, base, open, open],
      // a couple that tips the left column toward +x turns from +z toward +x: negative
      loads: [
        [0, 0, 0],
        [r * lateral, 0, -couple(r)],
        [0, 0, 0],
        [0, 0, 0],
        [(1 - r) * lateral, 0, couple(1 - r)],
        [0, 0, 0],
      ],
    });
    const turning = (node: number): number =>
      frame.baseStiffness === "rigid" ? reactions[node]![2] : -frame.baseStiffness * moves[node]![2];
    return {
      left: { moment: turning(0), shear: -reactions[0]![0] },
      right: { moment: -turning(3), shear: reactions[3]![0] },
      strut: ((moves[2]![0] - moves[5]![0]) * strutEA) / L,
    };
  };

  test("springs, strut stiffness, unequal and lateral loads: same moments, shears and strut force", () => {
    fc.assert(
      fc.property(frames, loads, real(0.02, 0.98), (frame, load, rho) => {
        const at = { ...load, carriageHeight: rho * frame.tieHeight! };
        const [one, two] = [able(baseReactions(frame, at)), byMembers(frame, at)];
        const M = at.dynamicFactor * at.weight * frame.reach + Math.abs(at.workForce!.force) * frame.tieHeight!;
        close(one.left.inwardMoment, two.left.moment, M, 2e-5);
        close(one.right.inwardMoment, two.right.moment, M, 2e-5);
        close(one.left.inwardShear, two.left.shear, M / frame.tieHeight!, 2e-5);
        close(one.right.inwardShear, two.right.shear, M / frame.tieHeight!, 2e-5);
        close(one.strutForce, two.strut, M / frame.tieHeight!, 2e-5);
      }),
      { numRuns: 150 },
    );
  });
});

describe("closed forms and limits", () => {
  test("rigid and even: M[1 − 1.5ρ(2 − ρ)] and 1.5ρ(2 − ρ)M/H", () => {
    for (const rho of [0, 0.1, 0.194, 0.42265, 0.7, 1]) {
      const { left, right, strutForce } = able(baseReactions(rigid, { ...even, carriageHeight: rho * H }));
      const k = 1.5 * rho * (2 - rho);
      close(left.inwardMoment, applied * (1 - k), applied);
      close(right.inwardMoment, applied * (1 - k), applied);
      close(strutForce, (k * applied) / H, applied / H);
    }
  });
  test("carriage on the floor: no relief; free-standing: none at any height", () => {
    close(able(baseReactions(rigid, { ...even, carriageHeight: 0 })).left.inwardMoment, applied, applied);
    for (const carriageHeight of [0, 700, 2500]) {
      const { left, strutForce } = able(baseReactions({ ...rigid, top: "free-standing" }, { ...even, carriageHeight }));
      close(left.inwardMoment, applied, applied);
      expect(strutForce).toBe(0);
    }
  });
  test("ever stiffer springs and strut tend to the rigid frame; a soft base sheds its moment to the strut", () => {
    const fixed = able(baseReactions(rigid, even)).left.inwardMoment;
    const gap = [1e12, 1e14, 1e16].map((k) => {
      const frame = { ...rigid, baseStiffness: k, columnEI: 8e12, strutEA: k };
      return Math.abs(able(baseReactions(frame, even)).left.inwardMoment - fixed) / applied;
    });
    expect(gap[1]!).toBeLessThan(0.02 * gap[0]!);
    expect(gap[2]!).toBeLessThan(1e-5);
    const hinge = able(baseReactions({ ...rigid, baseStiffness: 1, columnEI: 8e12 }, even));
    close(hinge.left.inwardMoment, 0, applied, 1e-6);
    close(hinge.strutForce, applied / H, applied / H, 1e-6);
  });
  test("a strut as soft as nothing, or slack beyond the sway, leaves the columns free-standing", () => {
    const loose = able(baseReactions({ ...soft, strutEA: 1e-6 }, even));
    close(loose.left.inwardMoment, applied, applied);
    const slack = able(baseReactions({ ...soft, strutSlack: 1e4 }, even));
    close(slack.left.inwardMoment, applied, applied);
  });
  test("more slack never eases the base at pick-up", () => {
    let before = able(baseReactions(soft, even)).left.inwardMoment;
    for (const strutSlack of [1, 2, 4, 8, 16]) {
      const now = able(baseReactions({ ...soft, strutSlack }, even)).left.inwardMoment;
      expect(now).toBeGreaterThanOrEqual(before);
      before = now;
    }
  });
  test("one side loaded: the strut takes half, and the unloaded column is pushed outward by it", () => {
    const both = able(baseReactions(rigid, even));
    const one = able(baseReactions(rigid, { ...even, leftShare: 1, weight: even.weight / 2 }));
    close(one.strutForce, both.strutForce / 2, both.strutForce);
    close(one.right.inwardMoment, (-both.strutForce / 2) * H, applied);
  });
});

describe("superposition and mirror", () => {
  test("uneven = even part + opposite part, and the opposite part finds no strut", () => {
    fc.assert(
      fc.property(frames, real(0, 1), real(0, 2900), (frame, r, carriageHeight) => {
        const at = { ...even, carriageHeight };
        const [evenly, uneven] = [able(baseReactions(frame, at)), able(baseReactions(frame, { ...at, leftShare: r }))];
        const M = at.dynamicFactor * at.weight * frame.reach;
        close(uneven.strutForce, evenly.strutForce, M / frame.tieHeight!);
        close(uneven.left.inwardMoment - evenly.left.inwardMoment, (r - 0.5) * M, M);
        close(uneven.right.inwardMoment - evenly.right.inwardMoment, (0.5 - r) * M, M);
      }),
    );
  });
  test("a lateral push on an even lift is all sway: each base takes half of it times its height", () => {
    const pushed = { ...even, workForce: { force: 900, direction: "lateral" as const } };
    const [at, rest] = [able(baseReactions(soft, pushed)), able(baseReactions(soft, even))];
    close(at.left.inwardMoment - rest.left.inwardMoment, 450 * 700, applied);
    close(at.right.inwardMoment - rest.right.inwardMoment, -450 * 700, applied);
  });
  test("swapping shares and pushing the other way swaps the columns", () => {
    fc.assert(
      fc.property(frames, loads, (frame, load) => {
        const { force, direction } = load.workForce!;
        const other = {
          ...load,
          leftShare: 1 - load.leftShare,
          workForce: { direction, force: direction === "lateral" ? -force : force },
        };
        const [one, two] = [able(baseReactions(frame, load)), able(baseReactions(frame, other))];
        for (const q of Object.keys(one.left) as (keyof typeof one.left)[]) {
          close(two.right[q], one.left[q], 1e8, 1e-9);
          close(two.left[q], one.right[q], 1e8, 1e-9);
        }
      }),
    );
  });
  test("whole-lift equilibrium in plan: weight, moments and shears of both bases balance what was applied", () => {
    fc.assert(
      fc.property(frames, loads, real(-300, 300), real(0, 3000), (frame, load, crosswise, height) => {
        const workForce = { ...load.workForce!, height };
        const { left, right } = able(baseReactions(frame, { ...load, crosswise, workForce }));
        const [l, r] = [toPlan(left, "left"), toPlan(right, "right")];
        const F = workForce.force;
        const [Fx, Fy] = workForce.direction === "lateral" ? [F, 0] : [0, F];
        const W = load.dynamicFactor * load.weight;
        const alone = load.leftShare === 0 || load.leftShare === 1;
        close(l.P + r.P, W + 2 * frame.columnWeight, W);
        close(l.Vx + r.Vx, Fx, W);
        close(l.Vy + r.Vy, Fy, W);
        if (!alone) close(l.Mx + r.Mx, W * load.foreAft + Fy * height, W * 1000, 1e-8);
        const half = frame.spacing / 2;
        const about = (r.P - l.P) * half + l.My + r.My;
        close(about, W * (1 - 2 * load.leftShare) * (half - frame.reach) + Fx * height, W * 3000, 1e-8);
      }),
    );
  });
});

describe("by height", () => {
  test("the base moment only falls as the carriages rise, so its extremes stand at the ends", () => {
    fc.assert(
      fc.property(frames, (frame) => {
        const heights = Array.from({ length: 21 }, (_, i) => (i / 20) * frame.tieHeight!);
        const { points, most, least } = able(baseMomentByHeight(frame, even, heights));
        for (let i = 1; i < points.length; i++) expect(points[i]!.left).toBeLessThanOrEqual(points[i - 1]!.left);
        expect(most.left.height).toBe(heights[0]);
        expect(least.left.left).toBe(points.at(-1)!.left);
      }),
    );
  });
  test("a softer base lowers the moment in both directions", () => {
    for (const carriageHeight of [300, 700, 3000, 3600]) {
      const at = { ...even, carriageHeight };
      const [hard, give] = [able(baseReactions(rigid, at)), able(baseReactions(soft, at))];
      expect(Math.abs(give.left.inwardMoment)).toBeLessThan(Math.abs(hard.left.inwardMoment));
    }
  });
  test("bounds keep the worse of rigid and soft, quantity by quantity, and say which", () => {
    const give = { baseStiffness: 6e9, columnEI: 8e12 };
    const [hard, loose] = [able(baseReactions(rigid, even)), able(baseReactions({ ...rigid, ...give }, even))];
    const both = able(boundReactions(rigid, even, give));
    expect(both.left.inwardMoment).toBe(hard.left.inwardMoment);
    expect(both.strutForce).toBe(loose.strutForce);
    expect(both.left.inwardShear).toBe(loose.left.inwardShear);
    expect(both.terms.left.inwardMoment.basis).toContain("rigid base");
    expect(both.terms.strutForce.basis).toContain("soft base");
  });
});

describe("four pads", () => {
  test("within the admissible crosswise range no pad is pulled, at its ends one pad is free, and statics hold", () => {
    fc.assert(
      fc.property(
        real(0.05, 0.95),
        real(-0.45, 0.45),
        real(1000, 3000),
        real(0, 1),
        (leftShare, part, padSpacing, t) => {
          const four = { weight: 10_000, leftShare, foreAft: part * padSpacing, padSpacing };
          const [low, high] = admissibleCrosswise(four);
          expect(low).toBeLessThanOrEqual(0);
          expect(high).toBeGreaterThanOrEqual(0);
          const inside = padLoads(four, low + t * (high - low));
          expect(Math.min(...Object.values(inside))).toBeGreaterThanOrEqual(-1e-8);
          for (const end of [low, high]) close(Math.min(...Object.values(padLoads(four, end))), 0, 1e4);
          close(inside.leftFront + inside.leftRear, leftShare * 1e4, 1e4);
          const moment = ((inside.leftRear + inside.rightRear - inside.leftFront - inside.rightFront) * padSpacing) / 2;
          close(moment, 1e4 * four.foreAft, 1e7);
        },
      ),
    );
  });
  test("centred and even, one pad free: the diagonal carries half the weight each", () => {
    const four = { weight: 10_000, leftShare: 0.5, foreAft: 0, padSpacing: 1600 };
    const [, high] = admissibleCrosswise(four);
    expect(padLoads(four, high)).toEqual({ leftFront: 0, leftRear: 5000, rightFront: 5000, rightRear: 0 });
  });
});

describe("plan", () => {
  const { left, right } = able(baseReactions(rigid, { ...even, foreAft: 120 }));
  test("both columns press their inner edges: the left one toward +x, the right one toward −x, both toward the door", () => {
    expect(toPlan(left, "left").My).toBeGreaterThan(0);
    expect(toPlan(right, "right").My).toBe(-toPlan(left, "left").My);
    expect(toPlan(right, "right").Mx).toBe(toPlan(left, "left").Mx);
    expect(toPlan(left, "left").Mx).toBeGreaterThan(0);
    // the beam pushes the heads apart, so the bases push the floor apart
    expect(toPlan(left, "left").Vx).toBeLessThan(0);
  });
  test("a lift turned a quarter: the left column's inward side looks to +y", () => {
    const turned = toPlan(left, "left", Math.PI / 2);
    close(turned.Mx, left.inwardMoment, applied);
    close(turned.My, -left.foreAftMoment, applied);
  });
  test("turning is undone by turning back; plate axes undo the plate's own turn", () => {
    fc.assert(
      fc.property(real(-4, 4), (angle) => {
        const plan = toPlan(left, "left");
        const back = toPlateAxes(turnReaction(plan, angle), angle);
        for (const q of ["P", "Mx", "My", "Vx", "Vy"] as const) close(back[q], plan[q], applied);
      }),
    );
  });
});

describe("load cases", () => {
  const duty: LiftDuty = {
    weight: 44_000,
    dynamicFactor: 1.15,
    pads: [
      { kind: "car", reach: 940, padSpacing: 1600 },
      { kind: "frame-truck", reach: 1140, padSpacing: 2500 },
    ],
    pickUpHeight: 700,
    fullRise: 2400,
    workForce: 900,
  };
  const cases = able(loadCases(rigid, duty));
  const named = (id: string) => cases.find((c) => c.id === id)!;

  test("every case has its own id and name, and no number is missing", () => {
    expect(new Set(cases.map((c) => c.id)).size).toBe(cases.length);
    expect(new Set(cases.map((c) => c.name)).size).toBe(cases.length);
    for (const { left, right } of cases) {
      for (const v of [...Object.values(left), ...Object.values(right)]) expect(Number.isFinite(v)).toBe(true);
    }
  });
  test("the missing beam and the three pads are told, never judged", () => {
    expect(cases.filter((c) => c.standing === "information").map((c) => c.id)).toEqual([
      "car-tie-missing",
      "car-three-pads",
      "frame-truck-tie-missing",
      "frame-truck-three-pads",
    ]);
    close(named("car-tie-missing").left.inwardMoment, 1.15 * 22_000 * 940, applied);
  });
  test("60/40 over the pads is a tenth of their spacing; crosswise turns the columns against each other", () => {
    close(named("car-toward-door").left.foreAftMoment, 1.15 * 22_000 * 160, applied);
    close(named("car-toward-back").left.foreAftMoment, -1.15 * 22_000 * 160, applied);
    const { left, right } = named("car-crosswise");
    close(left.foreAftMoment, 1.15 * 22_000 * 160, applied);
    close(right.foreAftMoment, -left.foreAftMoment, applied);
  });
  test("truck pads lie nearer the middle of the vehicle and bring more moment", () => {
    expect(named("frame-truck-pick-up").left.inwardMoment).toBeGreaterThan(named("car-pick-up").left.inwardMoment);
  });
  test("a free-standing lift has no cases of a beam, and the same moment at any height", () => {
    const free = able(loadCases({ ...rigid, top: "free-standing" }, duty));
    expect(free.some((c) => c.id.includes("tie-missing") || c.id.includes("full-rise"))).toBe(false);
    expect(free.some((c) => c.id === "car-work-door")).toBe(true);
  });
  test("as supports in the bay: both columns half a spacing from the middle, weights and names kept", () => {
    const at = twoPostSupports(named("car-pick-up"), 3200);
    expect(at.supports.map(({ id, x }) => [id, x])).toEqual([
      ["left", -1600],
      ["right", 1600],
    ]);
    expect(at.supports[1]!.reaction.My).toBe(-at.supports[0]!.reaction.My);
  });
  test("values are those of their own terms", () => {
    for (const { left, terms } of cases) expect(left.inwardMoment).toBe(terms.left.inwardMoment.value);
  });
});

describe("where there is no answer it says why", () => {
  const reason = (frame: ColumnFrame, load: LiftLoad): string => {
    const result = baseReactions(frame, load);
    return isUnable(result) ? result.reason : "";
  };
  const { tieHeight: _, ...unknown } = rigid;
  test.each([
    ["height of the overhead beam", unknown, even],
    ["above the overhead beam", rigid, { ...even, carriageHeight: 4000 }],
    ["bending stiffness of the columns", { ...rigid, baseStiffness: 1e9 }, even],
    ["without rotational stiffness", { ...rigid, baseStiffness: 0, columnEI: 1e12 }, even],
    ["between 0 and 1", rigid, { ...even, leftShare: 1.2 }],
    ["reach past the middle", { ...rigid, reach: 1700 }, even],
  ] as const)("%s", (words, frame, load) => {
    expect(reason(frame, load)).toContain(words);
  });
});
