/**
 * Edges and corners that run aslant to the grid against published slabs: Huang, Pavement Analysis and Design (2nd ed.
 * 2004), Examples 4.2 (corner: Westergaard 1926; Ioannides, Thompson & Barenberg 1985) and 4.4 (edge: Westergaard 1948);
 * the corner of a quarter-endless thin plate by a converged Ritz solution (own, derived outside this project's code).
 * Slab of both: E 4,000,000 psi, ν 0.15, h 10 in, k 100 pci, P 10,000 lb, a 6 in.
 */
import { clipByHalfPlane, type Point, type Polygon } from "@floorworthy/engine/geometry";
import { describe, expect, test } from "vitest";
import {
  circle,
  corners,
  inch,
  lengthOf,
  pci,
  plainFloor,
  pound,
  psi,
  relativeError,
  solveOne,
  spread,
  square,
} from "../plates/setups.ts";

const half = 260 * inch;
const slab = plainFloor(square(half), { thickness: 10 * inch, E: 4e6 * psi, k: 100 * pci });
const P = 10_000 * pound;
const turned =
  (angle: number) =>
  (p: Point): Point => ({
    x: p.x * Math.cos(angle) - p.y * Math.sin(angle),
    y: p.x * Math.sin(angle) + p.y * Math.cos(angle),
  });
const beyond = (part: Polygon, normal: Point): Polygon => clipByHalfPlane(part, { nx: -normal.x, ny: -normal.y, c: 0 });
const boxOf = (points: readonly Point[]) => ({
  x0: Math.min(...points.map((p) => p.x)),
  x1: Math.max(...points.map((p) => p.x)),
  y0: Math.min(...points.map((p) => p.y)),
  y1: Math.max(...points.map((p) => p.y)),
});

describe.each([2, 5, 10, 25, 45])("turned by %i°", (degrees) => {
  const turn = turned((degrees * Math.PI) / 180);

  test("edge: 279.4 psi and 0.0207 in", () => {
    const patch = circle(6 * inch, 6 * inch, 0).map(turn);
    const within = beyond(corners(square(half)), turn({ x: 1, y: 0 }));
    const result = solveOne({ ...slab, within }, [spread(patch, P)], { focus: [boxOf(patch)] });
    expect(relativeError(result.governing.stressBottom.value / psi, 279.4)).toBeLessThan(0.01);
    expect(relativeError(result.deflectionAt(turn({ x: 0.01, y: 0 })) / inch, 0.0207)).toBeLessThan(0.005);
  });

  test("corner: 0.05627 in and 194.8 psi at the top, above both printed formulas (186.6 and 190.3 psi)", () => {
    const c = 10.632 * inch;
    const patch = corners({ x0: 0, x1: c, y0: 0, y1: c }).map(turn);
    const within = beyond(beyond(corners(square(half)), turn({ x: 1, y: 0 })), turn({ x: 0, y: 1 }));
    const result = solveOne({ ...slab, within }, [spread(patch, P)], { focus: [boxOf(patch)] });
    const top = result.governing.stressTop.value / psi;
    expect(relativeError(top, 194.787)).toBeLessThan(0.01);
    expect(top).toBeGreaterThan(190.3);
    expect(relativeError(result.deflectionAt(turn({ x: 0.01, y: 0.01 })) / inch, 0.0562737)).toBeLessThan(0.005);
  });
});

test("the slab's l is the book's 42.97 in", () => expect(lengthOf(slab) / inch).toBeCloseTo(42.97, 1));
