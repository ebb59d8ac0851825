/** Laws of the anchor check: what can't make it better or worse, and where a clause makes an exception. */
import {
  type Anchor,
  type AnchorAssessment,
  type AnchorConcrete,
  type AnchorMode,
  type AnchorProduct,
  type Barrier,
  breakoutRegion,
  checkAnchorGroup,
  nearestBarrier,
} from "@floorworthy/engine/anchors";
import { interaction, psiEccentricityShear, psiEccentricityTension } from "@floorworthy/engine/codes/aci318-19";
import { polygonArea, signedArea } from "@floorworthy/engine/geometry";
import { isUnable, type Term } from "@floorworthy/engine/quantities";
import fc from "fast-check";
import { describe, expect, test } from "vitest";

const inch = 25.4;
const num = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const product: AnchorProduct = {
  kind: "expansion",
  da: 0.75 * inch,
  hef: 3.25 * inch,
  hnom: 4 * inch,
  category: 1,
  Ase: 150,
  futa: 700,
  ductile: "ductile",
  NpCracked: 25_000,
  NpUncracked: 32_000,
  hmin: 5 * inch,
};
const concrete: AnchorConcrete = { fc: 25, thickness: 150, state: "cracked", supplementary: "none" };

interface Situation {
  readonly anchors: readonly Anchor[];
  readonly product: AnchorProduct;
  readonly concrete: AnchorConcrete;
  readonly barriers: readonly Barrier[];
  readonly mode: AnchorMode;
  readonly axis: number;
}

const assess = (s: Partial<Situation> & Pick<Situation, "anchors">): AnchorAssessment => {
  const { anchors, barriers = [], mode = "service-allowance", axis = 0 } = s;
  const result = checkAnchorGroup(anchors, s.product ?? product, s.concrete ?? concrete, { barriers }, mode, axis);
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};

const ratios = (result: AnchorAssessment): Record<string, number> =>
  Object.fromEntries(result.checks.map(({ id, ratio }) => [id, ratio]));

/** Ratios with breakout of one anchor and of several as one: anchors drift into and out of groups as hef changes. */
const governing = (result: AnchorAssessment): Record<string, number> => {
  const { "anchor-breakout-group": group = 0, "anchor-breakout-single": single = 0, ...others } = ratios(result);
  return { ...others, breakout: Math.max(group, single) };
};

/** Every check of `after` at most as great as in `before`; a check that fell away counts 0. */
const neverWorse = (before: AnchorAssessment, after: AnchorAssessment, but: readonly string[] = []): void => {
  const was = governing(before);
  for (const [id, ratio] of Object.entries(governing(after)))
    if (!but.includes(id)) expect(ratio, id).toBeLessThanOrEqual((was[id] ?? 0) * (1 + 1e-9));
};

const sameRatios = (a: AnchorAssessment, b: AnchorAssessment): void => {
  const [p, q] = [ratios(a), ratios(b)];
  expect(Object.keys(q).sort()).toEqual(Object.keys(p).sort());
  for (const [id, ratio] of Object.entries(p))
    expect(Math.abs(q[id]! - ratio), id).toBeLessThanOrEqual(1e-6 * Math.max(1, ratio));
};

/** Five anchors of a base, as on a column: outer row of three, inner row of two. */
const base = (load: () => { tension: number; shearX: number; shearY: number }): readonly Anchor[] =>
  [[-190, -165], [-190, 0], [-190, 165], [100, -165], [100, 165]].map(([x, y], i) => ({ id: `A${i}`, x: x!, y: y!, ...load() })); // biome-ignore format: five places

const loads = fc.array(fc.record({ tension: num(-2000, 20_000), shearX: num(-3000, 3000), shearY: num(-3000, 3000) }), {
  minLength: 5,
  maxLength: 5,
});
const loaded = loads.map((five) => {
  let i = 0;
  return base(() => five[i++]!);
});
const equal = (tension: number, shearX = 0): readonly Anchor[] => base(() => ({ tension, shearX, shearY: 0 }));

/** A long straight edge at a distance from the origin, at an angle. */
const edgeAt = (d: number, angle: number, kind = "saw cut"): Barrier => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { a: { x: d * c + 9000 * s, y: d * s - 9000 * c }, b: { x: d * c - 9000 * s, y: d * s + 9000 * c }, kind };
};
const edges = fc
  .array(fc.record({ d: num(200, 900), angle: num(0, 6.28) }), { maxLength: 4 })
  .map((list) => list.map(({ d, angle }) => edgeAt(d, angle)));
const modes = fc.constantFrom<AnchorMode>("strength-design", "service-allowance");

describe("nothing depends on where and how the plan lies", () => {
  test("order of the anchors and of the barriers", () => {
    fc.assert(
      fc.property(loaded, edges, modes, (anchors, barriers, mode) => {
        sameRatios(
          assess({ anchors, barriers, mode }),
          assess({ anchors: anchors.toReversed(), barriers: barriers.toReversed(), mode }),
        );
      }),
      { numRuns: 60 },
    );
  });
  test("moved and turned, the axes of the base along with it", () => {
    fc.assert(
      fc.property(loaded, edges, num(-5000, 5000), num(-3.1, 3.1), (anchors, barriers, shift, angle) => {
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const turn = (x: number, y: number) => ({ x: c * x - s * y, y: s * x + c * y });
        const move = ({ x, y }: { x: number; y: number }) => {
          const p = turn(x, y);
          return { x: p.x + shift, y: p.y - 2 * shift };
        };
        const moved = anchors.map((a) => {
          const v = turn(a.shearX, a.shearY);
          return { ...a, ...move(a), shearX: v.x, shearY: v.y };
        });
        const turned = barriers.map(({ a, b, kind }) => ({ a: move(a), b: move(b), kind }));
        sameRatios(assess({ anchors, barriers }), assess({ anchors: moved, barriers: turned, axis: angle }));
      }),
      { numRuns: 60 },
    );
  });
  test("a barrier drawn the other way round, or in pieces, is the same barrier", () => {
    fc.assert(
      fc.property(loaded, num(200, 600), num(0, 6.28), (anchors, d, angle) => {
        const { a, b, kind } = edgeAt(d, angle);
        const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
        const whole = assess({ anchors, barriers: [{ a, b, kind }] });
        sameRatios(whole, assess({ anchors, barriers: [{ a: b, b: a, kind }] }));
        const halves = assess({ anchors, barriers: [{ a, b: middle, kind }, { a: middle, b, kind }] }); // biome-ignore format: two pieces
        expect(governing(halves).breakout).toBeCloseTo(governing(whole).breakout!, 8);
      }),
      { numRuns: 40 },
    );
  });
});

describe("edges, joints and cracks", () => {
  test("one more never helps the pull: breakout of one anchor", () => {
    fc.assert(
      fc.property(loaded, edges, num(0, 6.28), num(200, 900), (anchors, barriers, angle, d) => {
        // two edges at most: the third may shorten hef by 17.6.2.1.2, which then counts a smaller body against its own area
        const few = barriers.slice(0, 1);
        const [before, after] = [
          assess({ anchors, barriers: few }),
          assess({ anchors, barriers: [...few, edgeAt(d, angle)] }),
        ];
        const id = "anchor-breakout-single";
        expect(ratios(after)[id] ?? 0).toBeGreaterThanOrEqual((ratios(before)[id] ?? 0) * (1 - 1e-9));
      }),
      { numRuns: 80 },
    );
  });
  test("farther from a long edge is never worse, square or slanted, cracked or not", () => {
    const state = fc.constantFrom<AnchorConcrete["state"]>("cracked", "uncracked");
    fc.assert(
      fc.property(loaded, num(270, 800), num(0, 300), num(0, 6.28), state, (anchors, d, more, angle, state) => {
        const of = (distance: number) =>
          assess({ anchors, concrete: { ...concrete, state }, barriers: [edgeAt(distance, angle)] });
        neverWorse(of(d), of(d + more));
      }),
      { numRuns: 150 },
    );
  });
  test("farther, square to it, from a crack of any length is never worse for the body of an anchor", () => {
    const reach = 1.5 * 80;
    fc.assert(
      fc.property(num(1, 300), num(0, 200), num(-400, 400), num(1, 500), num(0, 6.28), (d, more, t, length, angle) => {
        const [c, s] = [Math.cos(angle), Math.sin(angle)];
        const at = (n: number, u: number) => ({ x: n * c - u * s, y: n * s + u * c });
        const area = (n: number) =>
          polygonArea(breakoutRegion({ x: 0, y: 0 }, [{ a: at(n, t), b: at(n, t + length), kind: "crack" }], reach));
        expect(area(d + more)).toBeGreaterThanOrEqual(area(d) - 1e-6);
      }),
      { numRuns: 300 },
    );
  });
  test("an anchor in a joint holds nothing, and says so with a finite plan and an endless ratio", () => {
    const result = assess({ anchors: equal(5000), barriers: [edgeAt(190, Math.PI)] });
    expect(ratios(result)["anchor-breakout-single"]).toBe(Number.POSITIVE_INFINITY);
    expect(ratios(result)["anchor-edge-minimum"]).toBe(Number.POSITIVE_INFINITY);
  });
  test("a joint between the rows parts the group: each side is checked by itself and named", () => {
    const result = assess({
      anchors: equal(5000),
      product: { ...product, hef: 100, hefQualifiedFrom: 150 },
      barriers: [edgeAt(60, 0)],
    });
    const group = result.checks.find(({ id }) => id === "anchor-breakout-group");
    expect(group?.governs).toBe("anchors A0, A1, A2");
    expect(result.notes.join()).toMatch(/saw cut runs between the anchors/);
  });
  test("the nearest barrier is measured with a tape: to the piece that is there", () => {
    const crack: Barrier = { a: { x: 30, y: 40 }, b: { x: 300, y: 400 }, kind: "crack" };
    const near = nearestBarrier({ x: 0, y: 0 }, [edgeAt(200, 0), crack]);
    expect([near?.distance, near?.barrier.kind, near?.at]).toEqual([50, "crack", { x: 30, y: 40 }]);
    expect(nearestBarrier({ x: 0, y: 0 }, [])).toBeUndefined();
  });
});

describe("concrete and anchors", () => {
  test("stronger concrete is never worse", () => {
    fc.assert(
      fc.property(loaded, edges, num(14, 50), num(0, 20), modes, (anchors, barriers, strength, more, mode) => {
        const of = (fcMPa: number) => assess({ anchors, barriers, mode, concrete: { ...concrete, fc: fcMPa } });
        neverWorse(of(strength), of(strength + more));
      }),
      { numRuns: 60 },
    );
  });
  test("a thicker slab is never worse for equally loaded anchors beside one edge", () => {
    // Unequal pulls: a thicker slab may gather more anchors into one group, whose ψec (17.6.2.3) is a rule of thumb.
    fc.assert(
      fc.property(num(70, 300), num(0, 100), num(270, 900), (t, more, d) => {
        const of = (thickness: number) =>
          assess({ anchors: equal(4000, 500), barriers: [edgeAt(d, 0)], concrete: { ...concrete, thickness } });
        neverWorse(of(t), of(t + more));
      }),
      { numRuns: 80 },
    );
  });
  test("a deeper anchor is never worse away from edges, save that it needs a thicker slab", () => {
    // Between edges a deeper body loses more area than it gains (17.6.2.1): that is why 17.6.2.1.2 exists.
    fc.assert(
      fc.property(num(40, 120), num(0, 40), (hef, more) => {
        const of = (depth: number) =>
          assess({
            anchors: equal(4000, 500),
            product: { ...product, hef: depth, hnom: depth },
            concrete: { ...concrete, thickness: 300 },
          });
        neverWorse(of(hef), of(hef + more), ["anchor-depth"]);
      }),
      { numRuns: 60 },
    );
  });
  test("cracked concrete is never better, save where splitting (ψcp) cuts the uncracked value near an edge", () => {
    fc.assert(
      fc.property(loaded, edges, modes, (anchors, barriers, mode) => {
        const of = (state: AnchorConcrete["state"]) =>
          assess({ anchors, barriers, mode, concrete: { ...concrete, state, supplementary: "present" } });
        neverWorse(of("cracked"), of("uncracked"));
      }),
      { numRuns: 60 },
    );
    const beside = { anchors: equal(4000), barriers: [edgeAt(250, Math.PI)] };
    const of = (state: AnchorConcrete["state"]) => ratios(assess({ ...beside, concrete: { ...concrete, state } }));
    expect(of("uncracked")["anchor-breakout-group"]!).toBeGreaterThan(of("cracked")["anchor-breakout-group"]!);
  });
  test("a poorer category and less supplementary steel are never better", () => {
    const anchors = equal(4000, 500);
    const of = (category: 1 | 2 | 3, supplementary: AnchorConcrete["supplementary"]) =>
      assess({
        anchors,
        mode: "strength-design",
        product: { ...product, category },
        concrete: { ...concrete, supplementary },
      });
    neverWorse(of(2, "none"), of(1, "none"));
    neverWorse(of(3, "none"), of(2, "none"));
    neverWorse(of(1, "none"), of(1, "present"));
  });
  test("pull and shear together: the verdict is that of 17.8, whatever is asked", () => {
    fc.assert(
      fc.property(num(100, 40_000), num(10, 30_000), (tension, shear) => {
        const result = assess({ anchors: equal(tension, shear) });
        const most = (part: RegExp) =>
          Math.max(...result.checks.filter(({ id }) => part.test(id)).map(({ ratio }) => ratio));
        const { asked, allowed } = interaction(most(/tension|breakout-(group|single)|pullout/), most(/shear|pryout/));
        expect(ratios(result)["anchor-interaction"]! <= 1).toBe(asked / allowed <= 1);
      }),
    );
  });
  test("ψec is at most 1 and falls with the eccentricity", () => {
    fc.assert(
      fc.property(num(-500, 500), num(0, 500), num(0.1, 30), (e, more, depth) => {
        for (const psi of [psiEccentricityTension, psiEccentricityShear]) {
          expect(psi(e, depth)).toBeLessThanOrEqual(1);
          expect(psi(Math.abs(e) + more, depth)).toBeLessThanOrEqual(psi(e, depth));
        }
      }),
    );
  });
});

describe("what is said beside the numbers", () => {
  const walk = (term: Term, see: (t: Term) => void): void => {
    see(term);
    for (const t of term.from ?? []) walk(t, see);
  };
  test("every number is finite and every computed one has its clause", () => {
    fc.assert(
      fc.property(loaded, edges, modes, (anchors, barriers, mode) => {
        const result = assess({ anchors, barriers, mode });
        for (const { demand, capacity, ratio, clause } of result.checks) {
          expect(Number.isNaN(ratio)).toBe(false);
          expect(clause).not.toBe("");
          for (const term of [demand, capacity])
            walk(term, (t) => {
              expect(Number.isFinite(t.value), t.symbol).toBe(true);
              expect(t.worked ?? "").not.toMatch(/NaN|undefined|Infinity/);
              if (t.formula !== undefined) expect(t.clause, t.symbol).toBeTruthy();
            });
        }
      }),
      { numRuns: 60 },
    );
  });
  test("the outlines to draw have the area that was counted", () => {
    const result = assess({ anchors: equal(4000), barriers: [edgeAt(250, Math.PI), edgeAt(250, 0.4)] });
    const drawn = result.areas.reduce((sum, outline) => sum + signedArea(outline), 0);
    expect(drawn).toBeGreaterThan(5 * 100 ** 2);
    const one = assess({ anchors: equal(4000).slice(0, 1) });
    expect(one.areas.map(polygonArea)[0]).toBeCloseTo(9 * (3.25 * inch) ** 2, 1);
  });
  test("absent facts are named, and what they cost", () => {
    const bare = assess({
      anchors: equal(4000),
      product: { kind: "expansion", da: 19.05, hef: 80 },
      mode: "strength-design",
    });
    expect(bare.missing.map((m) => m.split(",")[0]!.split(":")[0])).toEqual([
      "Ase",
      "futa",
      "Np",
      "category of the anchor (ACI 355.2 or 355.4)",
      "minimum slab thickness of the product",
      "minimum edge distance of the product",
      "minimum spacing of the product",
    ]);
    expect(ratios(bare)["anchor-steel-tension"]).toBeUndefined();
    const adhesive = assess({ anchors: equal(4000), product: { kind: "adhesive", da: 19.05, hef: 80 } });
    expect(adhesive.missing.join()).toMatch(/bond/);
  });
  test("a thin slab limits hef with the reason, unless the product's sheet qualifies it", () => {
    const thin = { ...concrete, thickness: 100 };
    const limited = assess({ anchors: equal(4000), concrete: thin });
    expect(limited.hef.value * inch).toBeCloseTo(200 / 3, 6);
    expect(limited.hef.clause).toBe("ACI 318-19 17.9.4");
    const qualified = assess({ anchors: equal(4000), concrete: thin, product: { ...product, hefQualifiedFrom: 100 } });
    expect(qualified.hef.value).toBeCloseTo(3.25, 12);
    expect(qualified.hef.basis).toMatch(/product sheet/);
  });
  test("no pull and no shear: only distances are checked, and it is said", () => {
    const result = assess({ anchors: equal(-100), barriers: [edgeAt(400, 0)] });
    expect(Object.keys(ratios(result))).toEqual([
      "anchor-edge-minimum", "anchor-spacing-minimum", "anchor-thickness-minimum", "anchor-depth",
    ]); // biome-ignore format: a list
    expect(result.notes).toContain("No anchor is pulled in this case.");
  });
  test("unusable input comes back in words", () => {
    const at = (change: Partial<Anchor>): readonly Anchor[] => [
      { id: "A", x: 0, y: 0, tension: 1, shearX: 0, shearY: 0, ...change },
    ];
    const reason = (anchors: readonly Anchor[], p = product, c = concrete): string => {
      const result = checkAnchorGroup(anchors, p, c, { barriers: [] }, "strength-design");
      return isUnable(result) ? result.reason : "able";
    };
    expect(reason([])).toBe("there is no anchor to check");
    expect(reason(at({ tension: Number.NaN }))).toBe("anchor A has a place or a load that is not a number");
    expect(reason([...at({}), ...at({ id: "B" })])).toBe("anchors A and B stand at the same place");
    expect(reason(at({}), { ...product, hef: 0 })).toBe("the effective embedment must be a number above 0, got 0");
    expect(reason(at({}), product, { ...concrete, fc: -1 })).toBe(
      "the concrete strength must be a number above 0, got -1",
    );
    expect(reason(at({}))).toBe("able");
  });
});
