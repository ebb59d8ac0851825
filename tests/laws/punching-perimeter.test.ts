import { controlPerimeter } from "@floorworthy/engine/slabs";
import { describe, expect, test } from "vitest";

const patch = { x0: 0, y0: 0, x1: 400, y1: 200 };
const room = (d: number) => ({ left: d, right: d, back: d, front: d });

describe("punching perimeter of a patch on a slab with free edges", () => {
  test("edges on all four sides, all far: the perimeter closes round the patch", () => {
    expect(controlPerimeter(patch, 75, room(10_000))).toEqual(
      controlPerimeter(patch, 75, room(Number.POSITIVE_INFINITY)),
    );
  });

  test("a block hardly wider than the patch: nothing to punch through", () => {
    expect(controlPerimeter(patch, 75, room(20))).toMatchObject({
      length: 0,
      open: ["left", "right", "back", "front"],
    });
  });

  test("a nearer edge never lengthens it, and something is always cut", () => {
    let before = Number.POSITIVE_INFINITY;
    for (const left of [5000, 1000, 300, 150, 80, 40, 0]) {
      const { length } = controlPerimeter(patch, 75, { ...room(3000), left });
      expect(length).toBeGreaterThan(0);
      expect(length).toBeLessThanOrEqual(before + 1e-9);
      before = length;
    }
  });
});
