import type { Layout } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import { shownLength } from "../quantities/shown.ts";
import type { Units } from "../work/messages.ts";

/** The plan in words, for whoever reads rather than looks. */
export const PlanWords = ({ layout, job, units }: { layout: Layout; job: Job; units: Units }) => {
  const at = (mm: number) => `${shownLength(mm, units)}${units === "si" ? " mm" : ""}`;
  const { joints, cracks, pipes, readings } = job.floor;
  return (
    <details className="plan-words">
      <summary>The plan in words</summary>
      <ul>
        {layout.bases.map(({ side, centre, anchors }) => (
          <li key={side}>
            The {side} column stands {at(centre.x)} from the left wall and {at(centre.y)} from the back wall, on{" "}
            {anchors.length} anchors.
          </li>
        ))}
        {layout.zones.map(({ name, kind, state, thickness }) => (
          <li key={name}>
            {name}: a {state} {kind}
            {thickness !== undefined && `, ${at(thickness)} thick`}.
          </li>
        ))}
        {joints.map(({ name, kind, from, to }) => (
          <li key={name}>
            Joint {name} ({kind}) runs from {at(from.x)}, {at(from.y)} to {at(to.x)}, {at(to.y)}.
          </li>
        ))}
        {cracks.map(({ name, line }) => (
          <li key={name}>
            Crack {name} starts at {at(line[0]?.x ?? 0)}, {at(line[0]?.y ?? 0)}.
          </li>
        ))}
        {pipes.map(({ name, kind }) => (
          <li key={name}>
            Pipe {name} ({kind}) lies in the bay.
          </li>
        ))}
        {readings.map(({ near, at: place, thickness }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: readings have no other name
          <li key={i}>
            Thickness reading {i + 1}
            {near && `, ${near}`}
            {place && `, at ${at(place.x)}, ${at(place.y)}`}: {thickness.known ? thickness.written : "not known"}.
          </li>
        ))}
      </ul>
      <p className="quiet">Places are given as distance from the left wall, then from the back wall.</p>
    </details>
  );
};
