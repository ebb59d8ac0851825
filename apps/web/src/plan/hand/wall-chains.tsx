import type { Point, Rect } from "@floorworthy/engine/geometry";
import type { Units } from "../../work/messages.ts";
import { Chain } from "../chain.tsx";

/** The columns from the left and the back wall, and the bay's own sizes: always in sight. */
export const WallChains = (props: {
  readonly bay: Rect;
  readonly columns: readonly Point[];
  readonly letters: number;
  readonly units: Units;
}) => {
  const { bay, columns, letters, units } = props;
  const frame = { inside: { ...bay, x0: bay.x0 - 0.9 * letters, y0: bay.y0 - 0.9 * letters }, outside: bay, letters };
  return (
    <g className="wall-chains">
      <Chain axis="x" stops={[bay.x0, ...columns.map(({ x }) => x), bay.x1]} frame={frame} units={units} />
      <Chain axis="y" stops={[bay.y0, ...columns.map(({ y }) => y), bay.y1]} frame={frame} units={units} />
    </g>
  );
};
