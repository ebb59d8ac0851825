import type { Point, Rect } from "@floorworthy/engine/geometry";
import { shownLength } from "../../quantities/shown.ts";
import type { Units } from "../../work/messages.ts";

/** How far the chosen thing is from the left and the back wall, as one would lay the tape. */
export const TapeLines = (props: {
  readonly at: Point;
  readonly bay: Rect;
  readonly letters: number;
  readonly units: Units;
}) => {
  const { at, bay, letters, units } = props;
  const [dx, dy] = [at.x - bay.x0, at.y - bay.y0];
  return (
    <g className="tape">
      <path d={`M${bay.x0} ${at.y}H${at.x}M${at.x} ${bay.y0}V${at.y}`} />
      <text x={(bay.x0 + at.x) / 2} y={at.y - letters * 0.4} fontSize={letters} textAnchor="middle">
        {shownLength(dx, units)}
      </text>
      <text x={at.x + letters * 0.4} y={(bay.y0 + at.y) / 2} fontSize={letters}>
        {shownLength(dy, units)}
      </text>
    </g>
  );
};

/** A length measured between two places. */
export const Measured = ({
  points,
  letters,
  units,
}: {
  readonly points: readonly Point[];
  readonly letters: number;
  readonly units: Units;
}) => {
  const [a, b] = points;
  if (!a || !b) return null;
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  return (
    <g className="tape measured">
      <path d={`M${a.x} ${a.y}L${b.x} ${b.y}`} />
      <text x={(a.x + b.x) / 2 + letters * 0.5} y={(a.y + b.y) / 2 - letters * 0.5} fontSize={letters}>
        {shownLength(Math.hypot(dx, dy), units)} ({shownLength(Math.abs(dx), units)} across,{" "}
        {shownLength(Math.abs(dy), units)} along)
      </text>
    </g>
  );
};
