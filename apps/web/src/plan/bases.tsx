import type { PlacedBase } from "@floorworthy/assess";
import { type Frame, pointList } from "./frame.ts";

/** Base plates with their anchors, and the mark of each column's centre. */
export const Bases = ({ bases, frame, look }: { bases: readonly PlacedBase[]; frame: Frame; look: "bay" | "base" }) => (
  <g className="bases">
    {bases.map(({ side, centre, outline, anchors }) => (
      <g key={side}>
        <polygon className="base" points={pointList(outline)} />
        <path className="centre" d={centreMark(centre.x, centre.y, frame.letters * (look === "bay" ? 1.7 : 2.6))} />
        {anchors.map(({ id, at }) => (
          <g key={id}>
            <circle className="anchor" cx={at.x} cy={at.y} r={frame.letters * (look === "bay" ? 0.2 : 0.42)} />
            {look === "base" && (
              <text x={at.x + frame.letters * 0.6} y={at.y - frame.letters * 0.5}>
                {id}
              </text>
            )}
          </g>
        ))}
      </g>
    ))}
  </g>
);

const centreMark = (x: number, y: number, r: number): string => `M${x - r} ${y}h${2 * r}M${x} ${y - r}v${2 * r}`;
