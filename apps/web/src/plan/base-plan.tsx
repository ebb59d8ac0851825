import type { Layout, PlacedBase } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import type { Units } from "../work/messages.ts";
import { Chain } from "./chain.tsx";
import { baseFrame, pointList } from "./frame.ts";
import { NearFloor } from "./near-floor.tsx";

/** One base plate, large: its anchors by name, the chains across them, and the floor near it. */
export const BasePlan = (props: {
  readonly base: PlacedBase;
  readonly layout: Layout;
  readonly job: Job;
  readonly units: Units;
}) => {
  const { base, layout, job, units } = props;
  const frame = baseFrame(base);
  const { inside, outside, letters } = frame;
  const { x, y } = base.centre;
  const r = letters * 2.6;
  return (
    <svg
      className="base-plan"
      viewBox={`${outside.x0} ${outside.y0} ${outside.x1 - outside.x0} ${outside.y1 - outside.y0}`}
      fontSize={letters}
      role="img"
      aria-label={`The ${base.side} base plate with ${base.anchors.length} anchors`}
    >
      <NearFloor layout={layout} job={job} letters={letters} />
      <polygon className="base" points={pointList(base.outline)} />
      <path className="centre" d={`M${x - r} ${y}h${2 * r}M${x} ${y - r}v${2 * r}`} />
      {base.anchors.map(({ id, at }) => (
        <g key={id}>
          <circle className="anchor" cx={at.x} cy={at.y} r={letters * 0.42} />
          <text x={at.x + letters * 0.6} y={at.y - letters * 0.5}>
            {id}
          </text>
        </g>
      ))}
      <Chain
        axis="x"
        stops={[inside.x0, x, ...base.anchors.map(({ at }) => at.x), inside.x1]}
        frame={frame}
        units={units}
      />
      <Chain
        axis="y"
        stops={[inside.y0, y, ...base.anchors.map(({ at }) => at.y), inside.y1]}
        frame={frame}
        units={units}
      />
    </svg>
  );
};
