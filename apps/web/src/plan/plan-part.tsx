import { useState } from "react";
import type { OpenDocument } from "../job/use-document.ts";
import type { Units } from "../work/messages.ts";
import type { Answers } from "../work/use-answer.ts";
import { useWork } from "../work/use-work.ts";
import { BasePlan } from "./base-plan.tsx";
import { PlanHand } from "./hand/plan-hand.tsx";
import { Feasible } from "./overlays.tsx";
import { PlanWords } from "./plan-words.tsx";
import { SharedDrawing } from "./shared-drawing.tsx";
import { Stipple } from "./stipple.tsx";

type Shown = "shown" | "hidden";

const Overlay = (props: { readonly title: string; readonly shown: Shown; readonly onShow: (shown: Shown) => void }) => (
  <label>
    <input
      type="checkbox"
      checked={props.shown === "shown"}
      onChange={({ target }) => props.onShow(target.checked ? "shown" : "hidden")}
    />
    {props.title}
  </label>
);

/** The bay from above, always in sight: in hand, as it goes on paper, or one base of it. */
export const PlanPart = (props: { readonly open: OpenDocument; readonly answers: Answers; readonly units: Units }) => {
  const { open, answers, units } = props;
  const { good } = answers;
  const [look, setLook] = useState("in hand");
  const [cones, setCones] = useState<Shown>("hidden");
  const [places, setPlaces] = useState<Shown>("hidden");
  const placing = useWork("placing", places === "shown" ? [open.text, units] : undefined);
  const way = placing.value?.ok ? placing.value.value : undefined;
  const regions = way?.ways.find(({ stand }) => stand === "as-wanted")?.regions ?? [];
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
          {look === "in hand" && hef?.known && <Overlay title="breakout cones" shown={cones} onShow={setCones} />}
          {look === "in hand" && <Overlay title="where it may stand" shown={places} onShow={setPlaces} />}
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
          under={places === "shown" && <Feasible regions={regions} />}
          cones={cones === "shown" && hef?.known ? 1.5 * hef.value : undefined}
        />
      )}
      {layout && good && <PlanWords layout={layout} job={good.job} units={units} />}
    </section>
  );
};
