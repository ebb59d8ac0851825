/** The fastest slip that readings allow, in closed form, against walking up in small steps with a fit of its own. */
import { fastestSlip, usualReadingError } from "@floorworthy/engine/bolts";
import fc from "fast-check";
import { expect, test } from "vitest";

const P = 2.54;
const error = usualReadingError;

/** One shape at a time, with normal equations written out: settling is free and not negative, slip is given. mm a day */
const walked = (days: readonly number[], turns: readonly number[], allowed: number): number => {
  const last = days[days.length - 1]!;
  const travel = turns.map((turn) => (turn / (2 * Math.PI)) * P);
  const sd = turns.map((turn) => (Math.hypot(error.nutTurn, error.turnFraction * turn) / (2 * Math.PI)) * P);
  let fastest = 0;
  for (const tau of [1 / 24, 1, 7, 30])
    for (const onset of [0, ...days.slice(0, -1)])
      for (const power of [1, 2]) {
        const between = (of: (day: number) => number) => days.map((day, i) => of(day) - of(days[i - 1] ?? 0));
        const a = between((day) => Math.log(1 + day / tau)).map((x, i) => x / sd[i]!);
        const b = between((day) => (Math.max(0, day - onset) / (last - onset)) ** power).map((x, i) => x / sd[i]!);
        const misfit = (slip: number): number => {
          const rest = travel.map((t, i) => t / sd[i]! - slip * b[i]!);
          const aa = a.reduce((sum, x) => sum + x * x, 0);
          const settling = Math.max(0, a.reduce((sum, x, i) => sum + x * rest[i]!, 0) / aa);
          return rest.reduce((sum, r, i) => sum + (r - settling * a[i]!) ** 2, 0);
        };
        for (let slip = 0; slip < 8; slip += 0.02)
          if (misfit(slip) <= allowed) fastest = Math.max(fastest, (slip * power) / (last - onset));
      }
  return fastest;
};

test("closed form and walking agree to a step", () =>
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 24 }), { minLength: 2, maxLength: 5 }),
      fc.double({ min: 1, max: 12, noNaN: true }),
      (fives, allowed) => {
        const days = fives.map((_, i) => 30 + 170 * i);
        const turns = fives.map((n) => (n * 5 * Math.PI) / 180);
        const visits = days.map((day, i) => ({ day, nutTurn: turns[i]! }));
        const exact = fastestSlip(visits, P, error, allowed);
        const slow = walked(days, turns, allowed);
        // a step of 0.02 mm of slip over at least 170 days, at power 2
        expect(exact).toBeGreaterThanOrEqual(slow - 1e-9);
        expect(exact - slow).toBeLessThanOrEqual((2 * 0.02) / 170 + 1e-9);
      },
    ),
    { numRuns: 40 },
  ));
