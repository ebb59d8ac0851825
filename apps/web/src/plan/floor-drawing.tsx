import type { Layout } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import { type Frame, pointList, rectAround } from "./frame.ts";

/** The floor and what is in it: slab, zones, walls, doors, joints, cracks, pipes, readings. */
export const FloorDrawing = (props: {
  readonly layout: Layout;
  readonly job: Job;
  readonly frame: Frame;
  readonly look: "bay" | "base";
}) => {
  const { layout, job, frame, look } = props;
  const { inside, letters } = frame;
  const outline = layout.outline ?? job.bay.outline;
  return (
    <g>
      {outline ? (
        <polygon className="slab" points={pointList(outline)} />
      ) : (
        <rect
          className="slab undrawn"
          x={inside.x0}
          y={inside.y0}
          width={inside.x1 - inside.x0}
          height={inside.y1 - inside.y0}
        />
      )}
      {layout.zones.map(({ name, outline: zone, state }) => (
        <polygon key={name} className="zone" data-state={state} points={pointList(zone)} />
      ))}
      {job.bay.obstacles.concat(job.bay.posts).map(({ name, outline: thing }) => (
        <polygon key={name} className="thing" points={pointList(thing)} />
      ))}
      {job.bay.walls.map(({ name, from, to }) => (
        <line key={name} className="wall" x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
      ))}
      {job.bay.doors.map(({ name, from, to }) => (
        <line key={name} className="door" x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
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
            <path d={cross(at.x, at.y, letters * 0.4)} />
            {look === "base" && thickness.known && (
              <text x={at.x + letters * 0.5} y={at.y - letters * 0.4}>
                {thickness.written}
              </text>
            )}
          </g>
        ) : null,
      )}
      {look === "bay" && <Labels {...props} />}
    </g>
  );
};

const cross = (x: number, y: number, r: number): string => `M${x - r} ${y}h${2 * r}M${x} ${y - r}v${2 * r}`;

const Labels = ({ layout, job, frame: { letters, inside } }: { layout: Layout; job: Job; frame: Frame }) => (
  <g className="labels">
    {layout.zones.map(({ name, outline }) => {
      const zone = rectAround(outline);
      return (
        <text key={name} x={(zone.x0 + zone.x1) / 2} y={zone.y1 + letters * 1.2} textAnchor="middle">
          {name}
        </text>
      );
    })}
    {job.floor.joints.map(({ name, from, to }) => {
      const upright = Math.abs(from.x - to.x) < Math.abs(from.y - to.y);
      const x = upright
        ? (from.x + to.x) / 2 + letters * 0.4
        : Math.min(inside.x1, Math.max(from.x, to.x)) - letters * 0.4;
      const y = upright
        ? Math.min(inside.y1, Math.max(from.y, to.y)) - letters * 0.6
        : (from.y + to.y) / 2 - letters * 0.4;
      return (
        <text key={name} x={x} y={y} textAnchor={upright ? "start" : "end"}>
          {name}
        </text>
      );
    })}
    {job.floor.cracks.map(({ name, line }) => (
      <text key={name} x={(line[0]?.x ?? 0) - letters * 0.4} y={(line[0]?.y ?? 0) - letters * 0.4} textAnchor="end">
        {name}
      </text>
    ))}
    {[...job.bay.obstacles, ...job.bay.posts].map(({ name, outline }) => {
      const thing = rectAround(outline);
      return (
        <text
          key={name}
          x={(thing.x0 + thing.x1) / 2}
          y={(thing.y0 + thing.y1) / 2 + letters * 0.3}
          textAnchor="middle"
        >
          {name}
        </text>
      );
    })}
    {job.bay.doors.map(({ name, from, to }) => (
      <text key={name} x={(from.x + to.x) / 2} y={(from.y + to.y) / 2 - letters * 0.6} textAnchor="middle">
        {name}
      </text>
    ))}
  </g>
);
