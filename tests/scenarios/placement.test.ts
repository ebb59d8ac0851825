/**
 * The saw cut in the way, acceptance scenario 4: anchors 6 in from the cut, a vehicle that leaves half an inch of play
 * between workbench, walkway and door. Printed windows and moves are the scenario's own, in inches.
 */
import {
  blockedBy,
  closedWindows,
  feasiblePositions,
  type LiftFootprint,
  type Obstacle,
  type Placement,
  type Room,
  smallestMove,
  type Turn,
} from "@floorworthy/engine/placement";
import { isUnable, toBase, type Unable } from "@floorworthy/engine/quantities";
import { describe, expect, test } from "vitest";

const inches = (v: number): number => toBase(v, "in");
const able = <T>(result: T | Unable): T => {
  if (isUnable(result)) throw new Error(result.reason);
  return result;
};
const at = ([x, y]: readonly [number, number]) => ({ x: inches(x), y: inches(y) });
const box = (x0: number, y0: number, x1: number, y1: number) =>
  [[x0, y0] as const, [x1, y0] as const, [x1, y1] as const, [x0, y1] as const].map(at);

// columns at x = 81 and 207 in: the origin midway, on the column line; u points inward
const pattern = [
  [-7.5, -6.5],
  [-7.5, 0],
  [-7.5, 6.5],
  [4, -6.5],
  [4, 6.5],
] as const;
const lift = (longer = 0): LiftFootprint => ({
  anchors: pattern.flatMap(([u, v]) => [at([-63 + u, v]), at([63 - u, v])]),
  plates: [box(-73, -9, -53, 9), box(53, -9, 73, 9)],
  body: box(-73, -9, 73, 9),
  vehicle: box(-36, -95, 36, 125 + longer),
});
const room: Room = {
  outline: box(0, 0, 288, 288),
  sides: ["back wall", "right wall", "door wall", "left wall"],
  clear: { anchors: inches(6) },
};
const obstacles: readonly Obstacle[] = [
  {
    id: "cut-x",
    name: "saw cut at x = 144 in",
    shape: { a: at([144, 0]), b: at([144, 288]) },
    clear: { anchors: inches(6) },
  },
  {
    id: "cut-y",
    name: "saw cut at y = 144 in",
    shape: { a: at([0, 144]), b: at([288, 144]) },
    clear: { anchors: inches(6) },
  },
  { id: "walkway", name: "workbench and walkway", shape: box(0, 0, 288, 30), clear: { vehicle: inches(24) } },
  { id: "door", name: "door", shape: { a: at([0, 288]), b: at([288, 288]) }, clear: { vehicle: inches(6) } },
];
const unturned: Turn = { mirror: "as-drawn", angle: 0 };
const place = (footprint: LiftFootprint, turns: readonly Turn[] = [unturned]): readonly Placement[] =>
  able(feasiblePositions(footprint, room, obstacles, turns));
const wanted = at([144, 154]);

describe("a saw cut at y = 144 in, the line wanted at 154", () => {
  test("the column line may stand from 156.5 to 157 in", () => {
    const regions = place(lift())[0]!.regions;
    expect(regions).toHaveLength(1);
    const ys = regions[0]!.outline.map(({ y }) => y);
    expect(Math.abs(Math.min(...ys) - inches(156.5))).toBeLessThan(0.01);
    expect(Math.abs(Math.max(...ys) - inches(157))).toBeLessThan(0.01);
  });

  test("the smallest move is 2.5 in toward the door; 3.0 in is the last that fits", () => {
    const placements = place(lift());
    const move = able(smallestMove(wanted, placements));
    expect(Math.abs(move.dy - inches(2.5))).toBeLessThan(0.01);
    expect(Math.abs(move.dx)).toBeLessThan(1e-6);
    expect(blockedBy(placements[0]!, move.to)).toEqual([]);
    expect(blockedBy(placements[0]!, at([144, 157]))).toEqual([]);
    expect(blockedBy(placements[0]!, at([144, 157.01])).map(({ id }) => id)).toEqual(["door"]);
  });

  test("as wanted, the nearest anchor row is 3.5 in from the cut, 6 asked; the cut between the columns is harmless", () => {
    const [block, ...others] = blockedBy(place(lift())[0]!, wanted);
    expect(others).toEqual([]);
    expect(block).toMatchObject({ id: "cut-y", part: "anchors", clear: inches(6) });
    expect(Math.abs(block!.distance - inches(3.5))).toBeLessThan(0.01);
  });

  test("behind the cut the line could stand at 131.5 in, but the nose would come to 36.5: the walkway closes that window", () => {
    const windows = closedWindows(wanted, place(lift())[0]!);
    expect(windows).toHaveLength(1);
    expect(Math.abs(windows[0]!.at.y - inches(131.5))).toBeLessThan(0.01);
    expect(windows[0]!.blocks.map(({ id }) => id)).toEqual(["walkway"]);
    expect(Math.abs(windows[0]!.blocks[0]!.distance - inches(6.5))).toBeLessThan(0.01); // 36.5 from the wall, bench to 30
  });

  test("a truck 4 in longer has no window, and the answer names what closes them", () => {
    const placements = place(lift(4));
    expect(placements[0]!.regions).toEqual([]);
    const answer = smallestMove(wanted, placements);
    expect(isUnable(answer) && answer.reason).toContain("saw cut at y = 144 in");
    expect(isUnable(answer) && answer.reason).toContain("workbench and walkway");
    expect(isUnable(answer) && answer.reason).toContain("door");
  });

  test("mirrored, a symmetric lift has the same window; backed in, it may stand from 179 to 187 in", () => {
    const [, mirrored, backedIn] = place(lift(), [
      unturned,
      { mirror: "mirrored", angle: 0 },
      { mirror: "as-drawn", angle: Math.PI },
    ]);
    expect(Math.abs(able(smallestMove(wanted, [mirrored!])).dy - inches(2.5))).toBeLessThan(0.01);
    const ys = backedIn!.regions.flatMap(({ outline }) => outline.map(({ y }) => y));
    expect(Math.abs(Math.min(...ys) - inches(30 + 24 + 125))).toBeLessThan(0.01);
    expect(Math.abs(Math.max(...ys) - inches(288 - 6 - 95))).toBeLessThan(0.01);
  });
});
