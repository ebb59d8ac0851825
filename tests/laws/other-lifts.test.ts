/** Statics of the other lift kinds: equilibrium of every case, and the trade's shares (common practice, no source). */
import {
  type FourPost,
  fourPostCases,
  mobileColumnCases,
  onePostCases,
  placeSupports,
  type Scissor,
  type SupportCase,
  scissorCases,
} from "@floorworthy/engine/frames";
import { isUnable, toBase, type Unable } from "@floorworthy/engine/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};
const real = (min: number, max: number) => fc.double({ min, max, noNaN: true, noDefaultInfinity: true });
const close = (a: number, b: number, scale: number): void => expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-9 * scale);
const sum = (c: SupportCase, f: (s: SupportCase["supports"][number]) => number): number =>
  c.supports.reduce((total, s) => total + f(s), 0);
const P = (c: SupportCase): number[] => c.supports.map((s) => s.reaction.P);

const fourPost: FourPost = {
  weight: 40_000,
  dynamicFactor: 1.1,
  postWeight: 1500,
  width: 2700,
  length: 4500,
  offsetX: 0,
  offsetY: 0,
  runwayHeight: 1900,
  workForce: 800,
};

describe("four-post", () => {
  test("centred: a quarter each when level, 35 % on the worst when rocking, half on two at the bound", () => {
    const cases = able(fourPostCases(fourPost));
    const of = (id: string): number[] => P(cases.find((c) => c.id === id)!).map((p) => (p - 1500) / 44_000);
    for (const p of of("level")) close(p, 0.25, 1);
    close(Math.max(...of("diagonal-left-front")), 0.35, 1);
    close(Math.max(...of("diagonal-left-rear")), 0.35, 1);
    expect(of("two-posts").map((p) => Math.round(p * 1e9) / 1e9)).toEqual([0.5, 0, 0, 0.5]);
    expect(cases.find((c) => c.id === "two-posts")!.standing).toBe("information");
  });

  test("every case: weight, both overturning moments and shears balance; no post is pulled", () => {
    fc.assert(
      fc.property(real(-400, 400), real(-700, 700), real(0, 1500), (offsetX, offsetY, workForce) => {
        for (const c of able(fourPostCases({ ...fourPost, offsetX, offsetY, workForce }))) {
          close(
            sum(c, (s) => s.reaction.P),
            44_000 + 6000,
            5e4,
          );
          const [Fx, Fy] = [sum(c, (s) => s.reaction.Vx), sum(c, (s) => s.reaction.Vy)];
          close(
            sum(c, (s) => s.reaction.P * s.x + s.reaction.My),
            44_000 * offsetX + Fx * 1900,
            1e9,
          );
          close(
            sum(c, (s) => s.reaction.P * s.y + s.reaction.Mx),
            44_000 * offsetY + Fy * 1900,
            1e9,
          );
          expect(Math.hypot(Fx, Fy)).toBeLessThanOrEqual(workForce + 1e-9);
          expect(Math.min(...P(c))).toBeGreaterThanOrEqual(1500 - 1e-6);
        }
      }),
    );
  });
});

describe("scissor", () => {
  const scissor: Scissor = {
    weight: 27_000,
    dynamicFactor: 1.1,
    ownWeight: 5000,
    width: 1300,
    length: 1600,
    offsetX: 20,
    offsetY: -50,
    fullRise: 1100,
    fixedEnds: "front",
    workForce: 700,
  };
  test("every case balances; a quarter each when centred", () => {
    for (const c of able(scissorCases(scissor))) {
      close(
        sum(c, (s) => s.reaction.P),
        29_700 + 5000,
        1e5,
      );
      if (c.id.startsWith("work") || c.id === "level" || c.id.startsWith("diagonal")) {
        const [Fx, Fy] = [sum(c, (s) => s.reaction.Vx), sum(c, (s) => s.reaction.Vy)];
        close(
          sum(c, (s) => s.reaction.P * s.x),
          29_700 * 20 + Fx * 1100,
          1e8,
        );
        close(
          sum(c, (s) => s.reaction.P * s.y),
          29_700 * -50 + Fy * 1100,
          1e8,
        );
      }
      for (const s of c.supports)
        if (s.id.endsWith("rear")) expect([s.reaction.Vx, s.reaction.Vy].map(Math.abs)).toEqual([0, 0]);
    }
    const level = able(scissorCases({ ...scissor, offsetX: 0, offsetY: 0 })).find((c) => c.id === "level")!;
    for (const p of P(level)) close(p, (29_700 + 5000) / 4, 1e4);
  });
});

describe("in the bay", () => {
  test("turning a lift keeps its total: the resultant turns about the lift's middle", () => {
    const [level] = able(fourPostCases({ ...fourPost, offsetX: 100, offsetY: 300, workForce: 0 }));
    const placed = placeSupports(level!, 5000, 4000, Math.PI / 2);
    close(
      sum(placed, (s) => s.reaction.P * (s.x - 5000)),
      44_000 * -300,
      1e8,
    );
    close(
      sum(placed, (s) => s.reaction.P * (s.y - 4000)),
      44_000 * 100,
      1e8,
    );
  });
  test("a weight outside the posts tips the lift", () => {
    const result = fourPostCases({ ...fourPost, offsetY: 2300 });
    expect(isUnable(result) && result.reason).toContain("tip");
  });
});

describe("one-post", () => {
  // invented 6,000-lb lift; weight times 48 to 60 in: 290 to 360 kip-in (class range, common practice)
  test.each([
    [48, 288],
    [60, 360],
  ])("reach %d in: %d kip-in on one base", (reach, moment) => {
    const cases = able(
      onePostCases({
        weight: toBase(6000, "lb"),
        dynamicFactor: 1,
        columnWeight: toBase(900, "lb"),
        reach: toBase(reach, "in"),
        foreAft: 0,
        padSpacing: toBase(65, "in"),
        fullRise: toBase(70, "in"),
        workForce: toBase(150, "lb"),
        side: "right",
      }),
    );
    const of = (id: string) => cases.find((c) => c.id === id)!.supports[0]!.reaction;
    close(of("centred").My, -toBase(moment, "kip-in"), 1e8);
    close(of("centred").P, toBase(6900, "lb"), 1e5);
    close(of("toward-door").Mx, toBase(6000 * 6.5, "lb-in"), 1e8);
    close(of("work-back").Mx, -toBase(150 * 70, "lb-in"), 1e8);
    expect(of("work-out").My).toBeLessThan(of("centred").My);
  });
});

describe("mobile column", () => {
  const column = { weight: 70_000, dynamicFactor: 1, columnWeight: 7000, trackWidth: 900, wheelBase: 1100 };
  test("80 % on the front pair by default; the feet carry everything", () => {
    const [only] = able(mobileColumnCases(column));
    close(
      sum(only!, (s) => s.reaction.P),
      77_000,
      1e5,
    );
    close(only!.supports[0]!.reaction.P, 0.4 * 77_000, 1e5);
  });
  test("with places known the lever rule decides, and a load beyond the feet tips it", () => {
    const [only] = able(mobileColumnCases({ ...column, front: { loadBehind: 150, columnBehind: 900 } }));
    close(
      sum(only!, (s) => s.reaction.P * (s.y + 550)),
      70_000 * 150 + 7000 * 900,
      1e8,
    );
    const tipped = mobileColumnCases({ ...column, front: { loadBehind: -200, columnBehind: 900 } });
    expect(isUnable(tipped) && tipped.reason).toContain("tips");
  });
});
