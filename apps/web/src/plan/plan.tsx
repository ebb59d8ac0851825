import type { Layout } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import { useState } from "react";
import type { Units } from "../work/messages.ts";
import { Bases } from "./bases.tsx";
import { BaseDimensions, BayDimensions } from "./dimensions.tsx";
import { FloorDrawing } from "./floor-drawing.tsx";
import { baseFrame, bayFrame } from "./frame.ts";
import { Hatches } from "./hatches.tsx";
import { PlanWords } from "./plan-words.tsx";

/** The bay seen from above: left wall to the left, back wall on top, the door below. */
export const Plan = ({ layout, job, units }: { layout: Layout; job: Job; units: Units }) => {
  const [looked, setLooked] = useState<string>("bay");
  const base = layout.bases.find(({ side }) => side === looked);
  const frame = base ? baseFrame(base) : bayFrame(layout, job);
  const { x0, y0, x1, y1 } = frame.outside;
  return (
    <section className="plan" aria-labelledby="plan-title">
      <header>
        <h2 id="plan-title">{base ? `The ${base.side} base` : "The bay from above"}</h2>
        <fieldset className="looks">
          <legend className="unseen">What the plan shows</legend>
          {["bay", ...layout.bases.map(({ side }) => side)].map((look) => (
            <label key={look}>
              <input
                type="radio"
                name="look"
                checked={look === (base ? looked : "bay")}
                onChange={() => setLooked(look)}
              />
              {look === "bay" ? "whole bay" : `${look} base`}
            </label>
          ))}
        </fieldset>
      </header>
      <svg
        viewBox={`${x0} ${y0} ${x1 - x0} ${y1 - y0}`}
        fontSize={frame.letters}
        role="img"
        aria-label="Plan of the bay; the same in words stands below it"
      >
        <Hatches letters={frame.letters} />
        <FloorDrawing layout={layout} job={job} frame={frame} look={base ? "base" : "bay"} />
        <Bases bases={layout.bases} frame={frame} look={base ? "base" : "bay"} />
        {base ? (
          <BaseDimensions base={base} frame={frame} units={units} />
        ) : (
          <BayDimensions bases={layout.bases} frame={frame} units={units} />
        )}
      </svg>
      <PlanWords layout={layout} job={job} units={units} />
    </section>
  );
};
