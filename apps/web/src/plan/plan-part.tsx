import { useState } from "react";
import type { OpenDocument } from "../job/use-document.ts";
import type { Units } from "../work/messages.ts";
import type { Answers } from "../work/use-answer.ts";
import { BasePlan } from "./base-plan.tsx";
import { PlanHand } from "./hand/plan-hand.tsx";
import { PlanWords } from "./plan-words.tsx";
import { SharedDrawing } from "./shared-drawing.tsx";
import { Stipple } from "./stipple.tsx";

/** The bay from above, always in sight: in hand, as it goes on paper, or one base of it. */
export const PlanPart = (props: { readonly open: OpenDocument; readonly answers: Answers; readonly units: Units }) => {
  const { open, answers, units } = props;
  const { good } = answers;
  const [look, setLook] = useState("in hand");
  const [cones, setCones] = useState<"shown" | "hidden">("hidden");
  const layout = good?.assessment.layout;
  const sides = layout?.bases.map(({ side }) => `${side} base`) ?? [];
  const base = layout?.bases.find(({ side }) => `${side} base` === look);
  const hef = good?.job.lift.anchors.product.effectiveEmbedment;
  return (
    <section className="plan" aria-labelledby="plan-title">
      <header>
        <h2 id="plan-title">{base ? `The ${base.side} base` : "The bay from above"}</h2>
        <fieldset className="looks">
          <legend className="unseen">What the plan shows</legend>
          {["in hand", "as on paper", ...sides].map((each) => (
            <label key={each}>
              <input type="radio" name="look" checked={each === look} onChange={() => setLook(each)} />
              {each}
            </label>
          ))}
          {look === "in hand" && hef?.known && (
            <label>
              <input
                type="checkbox"
                checked={cones === "shown"}
                onChange={({ target }) => setCones(target.checked ? "shown" : "hidden")}
              />
              breakout cones
            </label>
          )}
        </fieldset>
      </header>
      <Stipple />
      {base && layout && good ? (
        <BasePlan base={base} layout={layout} job={good.job} units={units} />
      ) : look === "as on paper" && good ? (
        <SharedDrawing svg={good.drawing} />
      ) : (
        <PlanHand
          open={open}
          layout={layout}
          job={good?.job}
          units={units}
          under={null}
          cones={cones === "shown" && hef?.known ? 1.5 * hef.value : undefined}
        />
      )}
      {layout && good && <PlanWords layout={layout} job={good.job} units={units} />}
    </section>
  );
};
