import type { Point } from "@floorworthy/engine/geometry";
import type { Region } from "@floorworthy/engine/placement";
import { ringsPath } from "../frame.ts";
import { apart } from "./apart.ts";

/** Margin figures at places where the lift may stand. */
export interface PlaceFigure {
  readonly at: Point;
  readonly words: string;
}

/** Where the lift's middle may be: hatched, so that it reads without colour; its present middle, and the margin at places. */
export const Feasible = (props: {
  readonly regions: readonly Pick<Region, "outline" | "holes">[];
  readonly middle: Point | undefined;
  readonly roomiest: Point | undefined;
  readonly figures: readonly PlaceFigure[];
  readonly letters: number;
}) => {
  const { regions, middle, roomiest, figures, letters } = props;
  const r = letters * 0.55;
  return (
    <g className="feasible" fontSize={letters * 0.85}>
      <defs>
        <pattern
          id="may-stand"
          width={letters}
          height={letters}
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d={`M0 0V${letters}`} />
        </pattern>
      </defs>
      <path className="feasible-area" d={ringsPath(regions.flatMap(({ outline, holes }) => [outline, ...holes]))} />
      {apart(figures, letters, middle ? [middle] : []).map(({ at, words }) => (
        <text key={`${at.x} ${at.y}`} x={at.x} y={at.y + letters * 0.3} textAnchor="middle">
          {words}
        </text>
      ))}
      {roomiest && (
        <g className="feasible-mark">
          <circle cx={roomiest.x} cy={roomiest.y} r={r} />
        </g>
      )}
      {middle && (
        <g className="feasible-mark">
          <path d={`M${middle.x - r} ${middle.y - r}l${2 * r} ${2 * r}m0 ${-2 * r}l${-2 * r} ${2 * r}`} />
        </g>
      )}
    </g>
  );
};
