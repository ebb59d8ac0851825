import type { Layout } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import { pointList } from "./frame.ts";

/** Slab, zones, joints, cracks, pipes and thickness readings, as far as the frame shows them. */
export const NearFloor = ({ layout, job, letters }: { layout: Layout; job: Job; letters: number }) => {
  const outline = layout.outline ?? job.bay.outline;
  return (
    <>
      {outline && <polygon className="slab" points={pointList(outline)} />}
      {layout.zones.map(({ name, outline: zone, state }) => (
        <polygon key={name} className="zone" data-state={state} points={pointList(zone)} />
      ))}
      {job.floor.pipes.map(({ name, line }) => (
        <polyline key={name} className="pipe" points={pointList(line)} />
      ))}
      {job.floor.joints.map(({ name, from, to, state }) => (
        <line key={name} className="joint" data-state={state} x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
      ))}
      {job.floor.cracks.map(({ name, line }) => (
        <polyline key={name} className="crack" points={pointList(line)} />
      ))}
      {job.floor.readings.map(({ at, thickness }, i) =>
        at ? (
          // biome-ignore lint/suspicious/noArrayIndexKey: readings have no other name
          <g key={i} className="reading">
            <path
              d={`M${at.x - letters * 0.4} ${at.y}h${letters * 0.8}M${at.x} ${at.y - letters * 0.4}v${letters * 0.8}`}
            />
            {thickness.known && (
              <text x={at.x + letters * 0.5} y={at.y - letters * 0.4}>
                {thickness.written}
              </text>
            )}
          </g>
        ) : null,
      )}
    </>
  );
};
