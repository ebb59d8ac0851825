import type { Point } from "@floorworthy/engine/geometry";
import { pointList } from "../frame.ts";
import type { Thing } from "./things.ts";

/** How each kind of thing is inked. The hidden wide stroke gives the hand something to take hold of. */
export const ThingShape = (props: {
  readonly thing: Thing;
  readonly points: readonly Point[];
  readonly letters: number;
  readonly chosen: boolean;
  /** a figure that would stand on its neighbour's waits until one looks nearer */
  readonly figure: "shown" | "waits";
}) => {
  const { thing, points, letters, chosen, figure } = props;
  const list = pointList(points);
  const first = points[0];
  const shared = {
    className: `thing thing-${thing.kind}`,
    "data-state": thing.state,
    "data-chosen": chosen || undefined,
  };
  if (thing.shape === "area") return <polygon {...shared} points={list} />;
  if (thing.shape === "line")
    return (
      <g {...shared}>
        <polyline points={list} />
        <polyline className="thing-grip" points={list} />
      </g>
    );
  if (thing.shape === "place" && first) {
    const r = letters * 0.5;
    return (
      <g {...shared}>
        <path d={`M${first.x - 0.7 * r} ${first.y - r}h${1.4 * r}l${-0.7 * r} ${r}z`} />
        {(figure === "shown" || chosen) && (
          <text x={first.x + 1.3 * r} y={first.y + r} fontSize={letters * 0.9}>
            {thing.label}
          </text>
        )}
        <circle className="thing-grip" cx={first.x} cy={first.y} r={letters} />
      </g>
    );
  }
  return null;
};
