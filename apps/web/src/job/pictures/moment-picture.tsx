import { CurvePicture } from "../../pictures/curve.tsx";
import { inUsualUnit, usualUnit } from "../../quantities/shown.ts";
import type { Units } from "../../work/messages.ts";
import { useWork } from "../../work/use-work.ts";
import { WorkState } from "../../work/work-state.tsx";

const padWords = { car: "arms under a car's sills", "frame-truck": "arms under a frame truck" } as const;

/** How the rated load tips a column's base from pick-up to full rise. */
export const MomentPicture = ({ text, units }: { text: string; units: Units }) => {
  const work = useWork("momentPicture", [text, units], { pause: 300 });
  if (!work.value?.ok) return work.state === "working" ? <WorkState work={work} what="Drawing the moment" /> : null;
  const rows = work.value.value;
  return (
    <CurvePicture
      title="Inward moment at a column's base against carriage height, rated load shared evenly"
      x={`carriage height, ${usualUnit("mm", units)}`}
      y={`moment, ${usualUnit("N·mm", units)}`}
      curves={rows.map(({ pads, points }, i) => ({
        name: padWords[pads],
        pen: i === 0 ? ("solid" as const) : ("dashed" as const),
        points: points.map(
          ({ height, moment }) => [inUsualUnit(height, "mm", units), inUsualUnit(moment, "N·mm", units)] as const,
        ),
      }))}
    />
  );
};
