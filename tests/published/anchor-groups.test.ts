/**
 * Anchor groups run through the whole check, not clause by clause.
 *
 * PCA, Notes on ACI 318-05/318-08, Part 34 Anchoring to Concrete, Example 34.3: from memory, reproduces by calculation.
 * ACI 318-19 17.6.2 and 17.7.2, formula vector: equations from memory; the values come from an independent calculation
 * confirmed by a second method.
 */
import { type AnchorProduct, checkAnchorGroup } from "@floorworthy/engine/anchors";
import { isUnable, type Term, toBase } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

const inch = (v: number): number => toBase(v, "in");
const lb = (v: number): number => toBase(v, "lb");
const near = (actual: number, printed: number, tolRel: number): void =>
  expect(Math.abs(actual / printed - 1), `${actual} against ${printed}`).toBeLessThanOrEqual(tolRel);

const find = (term: Term, symbol: string): number => {
  const seek = (t: Term): Term | undefined =>
    t.symbol === symbol ? t : t.from?.map(seek).find((f) => f !== undefined);
  const found = seek(term);
  if (found === undefined) throw new Error(`no ${symbol} below ${term.symbol}`);
  return found.value;
};

const run = (
  places: readonly (readonly [number, number])[],
  product: AnchorProduct,
  thickness: number,
  fc: number,
  edge: readonly [number, number, number, number],
  shear: number,
) => {
  const [ax, ay, bx, by] = edge.map(inch) as [number, number, number, number];
  const result = checkAnchorGroup(
    places.map(([x, y], i) => ({
      id: `${i + 1}`,
      x: inch(x),
      y: inch(y),
      tension: lb(1000),
      shearX: lb(shear),
      shearY: 0,
    })),
    product,
    { fc: toBase(fc, "psi"), thickness: inch(thickness), state: "cracked", supplementary: "none" },
    { barriers: [{ a: { x: ax, y: ay }, b: { x: bx, y: by }, kind: "slab edge" }] },
    "strength-design",
  );
  if (isUnable(result)) throw new Error(result.reason);
  return (id: string): Term => {
    const check = result.checks.find((c) => c.id === id);
    if (check === undefined) throw new Error(`no check ${id}`);
    return check.capacity;
  };
};

describe("PCA Notes Example 34.3: four 1/2 in studs 6 × 6 in, hef 4.5 in, edge at 3 in, f'c 4000 psi", () => {
  const places = [0, 6].flatMap((x) => [0, 6].map((y) => [x, y] as const));
  const studs: AnchorProduct = { kind: "cast-in", da: inch(0.5), hef: inch(4.5) };
  const capacity = run(places, studs, 18, 4000, [-3, -500, -3, 500], 0)("anchor-breakout-group");
  test("A_Nc 307 in²", () => near(find(capacity, "A_Nc"), 307, 0.00163));
  test("A_Nco 182 in²", () => near(find(capacity, "A_Nco"), 182, 0.00275));
  test("ψed 0.83", () => near(find(capacity, "ψed,N"), 0.83, 0.00603));
  test("Nb 14,490 lb", () => near(find(capacity, "Nb"), 14490, 3.46e-5));
  test("Ncbg 20,348.2 lb, by calculation", () => near(find(capacity, "Ncbg"), 20348.218595248083, 1e-4));
  test("0.70 Ncbg 14,200 lb, recalled to three digits", () => near(capacity.value, 14200, 0.004));
});

describe("ACI 318-19 vector: two post-installed anchors 8 in apart along an edge at 6 in, 6-in slab, f'c 3000 psi", () => {
  const expansion: AnchorProduct = { kind: "expansion", da: inch(0.625), hef: inch(3.5) };
  const capacity = run([[0, 0], [0, 8]], expansion, 6, 3000, [6, -500, 6, 500], 500); // biome-ignore format: two points
  const tension = capacity("anchor-breakout-group");
  const shear = capacity("anchor-shear-breakout");
  test("Nb", () => near(find(tension, "Nb"), 6096.935705745961, 1e-6));
  test("A_Nc of the pair", () => near(find(tension, "A_Nc"), 194.25, 1e-6));
  test("Ncbg", () => near(find(tension, "Ncbg"), 10742.220052980978, 1e-6));
  test("Vb, the smaller of two", () => near(find(shear, "Vb"), 6287.285142441889, 1e-6));
  test("A_Vc, only as deep as the slab", () => near(find(shear, "A_Vc"), 156, 1e-6));
  test("ψh,V", () => near(find(shear, "ψh,V"), 1.224744871391589, 1e-6));
  test("Vcbg", () => near(find(shear, "Vcbg"), 7415.1231875088215, 1e-6));
  test("Vcp = 2 Ncbg", () => near(find(capacity("anchor-pryout"), "Vcpg"), 21484.440105961956, 1e-6));
});
