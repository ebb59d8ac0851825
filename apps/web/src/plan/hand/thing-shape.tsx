import type { Point } from "@floorworthy/engine/geometry";
import { pointList } from "../frame.ts";
import type { Thing } from "./things.ts";

/** How each kind of thing is inked. The hidden wide stroke gives the hand something to take hold of. */
export const ThingShape = (props: {
  readonly thing: Thing;
  readonly points: readonly Point[];
  readonly letters: number;
  readonly chosen: boolean;
}) => {
  const { thing, points, letters, chosen } = props;
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
        <path d={`M${first.x - r} ${first.y - r}h${2 * r}l${-r} ${1.7 * r}z`} />
        <text x={first.x + 1.3 * r} y={first.y + r} fontSize={letters * 0.9}>
          {thing.label}
        </text>
        <circle className="thing-grip" cx={first.x} cy={first.y} r={letters} />
      </g>
    );
  }
  return null;
};
