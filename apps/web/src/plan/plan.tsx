import type { Layout } from "@floorworthy/assess";
import type { Job } from "@floorworthy/job";
import { useState } from "react";
import type { Units } from "../work/messages.ts";
import { BasePlan } from "./base-plan.tsx";
import { PlanWords } from "./plan-words.tsx";
import { SharedDrawing } from "./shared-drawing.tsx";
import { Stipple } from "./stipple.tsx";

/** The bay seen from above, or one base of it: left wall to the left, back wall on top, the door below. */
export const Plan = (props: {
  readonly layout: Layout;
  readonly job: Job;
  readonly drawing: string;
  readonly units: Units;
}) => {
  const { layout, job, units } = props;
  const [looked, setLooked] = useState<string>("bay");
  const base = layout.bases.find(({ side }) => side === looked);
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
      <Stipple />
      {base ? <BasePlan base={base} layout={layout} job={job} units={units} /> : <SharedDrawing svg={props.drawing} />}
      <PlanWords layout={layout} job={job} units={units} />
    </section>
  );
};
