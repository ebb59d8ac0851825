/** What must hold of the closed forms whatever the numbers. */

import { fromBase, toBase } from "@floorworthy/engine/quantities";
import {
  closedForms,
  collapseCheck,
  collapseLoad,
  controlPerimeter,
  cornerStress,
  edgeDistances,
  edgeExact,
  edgeStress,
  finiteBeam,
  infiniteUnderCouple,
  infiniteUnderLoad,
  interiorExact,
  interiorStress,
  kelvinDerivatives,
  lineLoadStress,
  overturningCollapse,
  semiInfinite,
  steelMoment,
  toeCouple,
} from "@floorworthy/engine/slabs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const slabs = fc.record({
  E: number(15e3, 40e3),
  nu: number(0, 0.3),
  h: number(75, 400),
  k: number(0.005, 0.2),
});

describe("closed forms", () => {
  test("thicker is never worse; more load is proportionally worse", () =>
    fc.assert(
      fc.property(slabs, number(20, 300), number(1, 100), (slab, a, more) => {
        const thick = { ...slab, h: slab.h + more };
        expect(interiorStress(thick, 1, a)).toBeLessThan(interiorStress(slab, 1, a));
        expect(interiorStress(slab, 7, a)).toBeCloseTo(7 * interiorStress(slab, 1, a), 9);
      }),
    ));
  test("corner and edge are worse than the interior for small loads", () =>
    fc.assert(
      fc.property(slabs, (slab) => {
        const a = slab.h * 0.3;
        expect(edgeStress(slab, 1, a, "1948-circle")).toBeGreaterThan(interiorStress(slab, 1, a, "ordinary"));
        expect(cornerStress(slab, 1, a)).toBeGreaterThan(0);
      }),
    ));
  test("inches and pounds give the same answer as millimetres and newtons", () => {
    const [inch, psi, pci, lb] = [toBase(1, "in"), toBase(1, "psi"), toBase(1, "pci"), toBase(1, "lb")];
    const us = interiorStress({ E: 4e6, nu: 0.15, h: 10, k: 100 }, 10000, 6);
    const si = interiorStress({ E: 4e6 * psi, nu: 0.15, h: 10 * inch, k: 100 * pci }, 10000 * lb, 6 * inch);
    expect(fromBase(si, "psi")).toBeCloseTo(us, 9);
  });
  test("the exact plate obeys its own scale: stress h²/P depends on a/l and ν only", () => {
    const one = edgeExact({ E: 30e3, nu: 0.2, h: 100, k: 0.03 }, 1000, 90, "circle");
    const l = (factor: number) => factor * 90;
    const two = edgeExact({ E: 30e3, nu: 0.2, h: 100 * 2 ** (4 / 3), k: 0.03 }, 1000, l(2), "circle");
    expect(two.moment).toBeCloseTo(one.moment, 6);
    expect(two.deflection / one.deflection).toBeCloseTo(1 / 4, 6);
  });
  test("the two Kelvin series meet where one hands over to the other", () => {
    const [below, above] = [kelvinDerivatives(8), kelvinDerivatives(8 + 1e-9)];
    expect(above.ker / below.ker).toBeCloseTo(1, 5);
    expect(above.kei / below.kei).toBeCloseTo(1, 5);
  });
  test("a very wide patch presses the slab down flat: w = q/k", () => {
    const slab = { E: 30e3, nu: 0.15, h: 100, k: 0.03 };
    expect((interiorExact(slab, 1e5, 2e4).deflection * Math.PI * 4e8 * 0.03) / 1e5).toBeCloseTo(1, 3);
  });
  test("every term unfolds, is finite and has a clause", () =>
    fc.assert(
      fc.property(slabs, number(20, 500), (slab, a) => {
        for (const { stress, deflection } of Object.values(closedForms(slab, 1e4, a))) {
          for (const term of [stress, deflection]) {
            expect(Number.isFinite(term.value)).toBe(true);
            expect(term.clause).toBeTruthy();
            expect(term.from?.length).toBeGreaterThan(3);
          }
        }
      }),
      { numRuns: 25 },
    ));
});

describe("beams on ground", () => {
  const beams = fc.record({ EI: number(1e10, 1e14), K: number(1, 200) });
  test("the ground carries exactly the loads, force and moment", () =>
    fc.assert(
      fc.property(
        beams,
        number(500, 8000),
        fc.array(fc.tuple(number(0, 1), number(-1e5, 1e5), number(-1e7, 1e7)), { minLength: 1, maxLength: 4 }),
        (beam, length, raw) => {
          const loads = raw.map(([s, force, couple]) => ({ at: s * length, force, couple }));
          const y = finiteBeam(beam, length, loads);
          const n = 16_000;
          let [force, moment] = [0, 0];
          for (let i = 0; i < n; i++) {
            const x = ((i + 0.5) * length) / n;
            const q = (beam.K * y(x).y * length) / n;
            force += q;
            moment += q * x;
          }
          const scale = loads.reduce((s, p) => s + Math.abs(p.force) + Math.abs(p.couple) / length, 1);
          expect(force / scale).toBeCloseTo(loads.reduce((s, p) => s + p.force, 0) / scale, 4);
          expect(moment / scale / length).toBeCloseTo(
            loads.reduce((s, p) => s + p.force * p.at + p.couple, 0) / scale / length,
            4,
          );
        },
      ),
      { numRuns: 30 },
    ));
  test("a long beam is an infinite one in the middle and a semi-infinite one at its end", () => {
    const beam = { EI: 1e12, K: 20 };
    const L = 60000;
    const [P, M0] = [1e4, 1e6];
    const mid = finiteBeam(beam, L, [{ at: L / 2, force: P, couple: M0 }])(L / 2 + 700);
    const [p, m] = [infiniteUnderLoad(beam, P, 700), infiniteUnderCouple(beam, M0, 700)];
    expect(mid.y).toBeCloseTo(p.y + m.y, 9);
    expect(mid.V).toBeCloseTo(p.V + m.V, 4);
    const end = finiteBeam(beam, L, [{ at: 0, force: P, couple: M0 }])(700);
    const semi = semiInfinite(beam, P, M0, 700);
    for (const key of ["y", "slope", "M", "V"] as const) expect(end[key] / semi[key]).toBeCloseTo(1, 6);
  });
  test("slope, moment and shear are the derivatives they claim to be", () => {
    const beam = { EI: 3e11, K: 25 };
    const y = finiteBeam(beam, 4000, [
      { at: 1000, force: 1e4, couple: 2e6 },
      { at: 4000, force: 5e3, couple: 0 },
    ]);
    for (const x of [300, 1500, 3200]) {
      const d = 0.5;
      const [a, b, c] = [y(x - d), y(x), y(x + d)];
      expect((c.y - a.y) / (2 * d) / b.slope).toBeCloseTo(1, 4);
      expect((-beam.EI * (c.slope - a.slope)) / (2 * d) / b.M).toBeCloseTo(1, 4);
      expect((c.M - a.M) / (2 * d) / b.V).toBeCloseTo(1, 4);
    }
  });
  test("a line load at a free edge is worse than inside", () => {
    const slab = { E: 25e3, nu: 0.15, h: 150, k: 0.03 };
    expect(lineLoadStress(slab, 10, "free edge")).toBeGreaterThan(lineLoadStress(slab, 10));
  });
});

describe("collapse", () => {
  const moments = fc.record({ Mp: number(0, 3e4), Mn: number(1e3, 3e4) });
  const places = fc.constantFrom("interior" as const, "edge" as const, "corner" as const);
  test("grows with the patch and with both moments, without jumps", () =>
    fc.assert(
      fc.property(places, moments, number(0, 900), (place, m, a) => {
        const load = collapseLoad(place, m, a, 800);
        expect(collapseLoad(place, m, a + 1e-7, 800) / load).toBeCloseTo(1, 6);
        expect(collapseLoad(place, m, a + 10, 800)).toBeGreaterThanOrEqual(load);
        expect(collapseLoad(place, { Mp: m.Mp * 1.1, Mn: m.Mn * 1.1 }, a, 800)).toBeCloseTo(1.1 * load, 3);
      }),
    ));
  test("the lower bound never promises more than the upper, and both are the plain check when nothing pulls", () =>
    fc.assert(
      fc.property(places, moments, number(0, 1e5), number(0, 5e4), (place, m, press, pull) => {
        const [C, T] = [
          { force: press, radius: 150, place },
          { force: pull, radius: 80, place },
        ];
        expect(overturningCollapse(C, T, m, 800, "lower").ratio).toBeGreaterThanOrEqual(
          overturningCollapse(C, T, m, 800, "upper").ratio,
        );
        const alone = overturningCollapse(C, { ...T, force: 0 }, m, 800).ratio;
        expect(alone).toBeCloseTo(collapseCheck(place, press, 150, 800, m).ratio, 9);
      }),
    ));
  test("a pull bends the slab the other way: at a corner it is held by the bottom moment alone", () => {
    const [C, T] = [
      { force: 0, radius: 150, place: "interior" as const },
      { force: 1000, radius: 160, place: "corner" as const },
    ];
    const check = overturningCollapse(C, T, { Mp: 500, Mn: 9000 }, 800);
    expect(check.ratio).toBeCloseTo((1000 * (1 - 0.2)) / (4 * 500), 9);
    expect(overturningCollapse(C, T, { Mp: 0, Mn: 9000 }, 800).ratio).toBe(Number.POSITIVE_INFINITY);
  });
  test("press and pull hold the base in balance", () =>
    fc.assert(
      fc.property(number(1e3, 1e5), number(0, 1e8), (P, M) => {
        const { press, pull } = toeCouple(P, M, 200, 400);
        expect(press - pull).toBeCloseTo(P, 6);
        if (pull > 0) expect(P * 200 + pull * 400).toBeCloseTo(M, 3);
      }),
    ));
  test("one layer of steel: never negative, zero without steel", () => {
    expect(steelMoment({ area: 0, fy: 420, depth: 100 }, 25)).toBe(0);
    expect(steelMoment({ area: 50, fy: 420, depth: 100 }, 25)).toBe(0);
  });
});

describe("control perimeter", () => {
  const patch = { x0: 0, y0: 0, x1: 400, y1: 300 };
  const far = Number.POSITIVE_INFINITY;
  test("inside: 2(bx + by) + 8 offset square, + 2π offset round", () => {
    const none = { left: far, right: far, back: far, front: far };
    expect(controlPerimeter(patch, 50, none).length).toBeCloseTo(1800, 9);
    expect(controlPerimeter(patch, 50, none, "round").length).toBeCloseTo(1400 + 100 * Math.PI, 9);
    expect(controlPerimeter(patch, 50, none, "round").area).toBeCloseTo(400 * 300 + 1400 * 50 + Math.PI * 2500, 6);
  });
  test("at an edge it runs out; at a corner it runs out twice", () => {
    const edge = controlPerimeter(patch, 50, { left: 0, right: far, back: far, front: far });
    expect(edge.open).toEqual(["left"]);
    expect(edge.length).toBeCloseTo(2 * 450 + 400, 9);
    const corner = controlPerimeter(patch, 50, { left: 0, right: far, back: 0, front: far });
    expect(corner.length).toBeCloseTo(450 + 350, 9);
  });
  test("moving an edge away never shortens it; a far edge does not matter", () =>
    fc.assert(
      fc.property(number(0, 3000), number(1, 200), (left, more) => {
        const at = (d: number) => controlPerimeter(patch, 60, { left: d, right: far, back: 500, front: far }).length;
        expect(at(left + more)).toBeGreaterThanOrEqual(at(left) - 1e-9);
        expect(at(1e6)).toBeCloseTo(
          controlPerimeter(patch, 60, { left: far, right: far, back: 500, front: far }).length,
          6,
        );
      }),
    ));
  test("distances are measured to the outline, a notch beside the patch included", () => {
    const slab = [
      { x: -1000, y: -800 },
      { x: 2000, y: -800 },
      { x: 2000, y: 320 },
      { x: 700, y: 320 },
      { x: 700, y: 2000 },
      { x: -1000, y: 2000 },
    ];
    expect(edgeDistances(patch, slab, 50)).toEqual({ left: 1000, right: 300, back: 800, front: 1700 });
    expect(edgeDistances(patch, slab, 10)).toEqual({ left: 1000, right: 1600, back: 800, front: 1700 });
  });
});
