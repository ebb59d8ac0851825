import { useState } from "react";
import type { OpenDocument } from "../job/use-document.ts";
import type { Units } from "../work/messages.ts";
import type { Answers } from "../work/use-answer.ts";
import { BasePlan } from "./base-plan.tsx";
import { PlanHand } from "./hand/plan-hand.tsx";
import { Feasible } from "./layers/feasible.tsx";
import { LayerWords } from "./layers/layer-words.tsx";
import { SlabLinesLayer } from "./layers/slab-lines.tsx";
import { type LayerName, layerNames, useLayers } from "./layers/use-layers.ts";
import { PlanWords } from "./plan-words.tsx";
import { SectionView } from "./section-view.tsx";
import { SharedDrawing } from "./shared-drawing.tsx";
import { Stipple } from "./stipple.tsx";
import { useNarrow } from "./use-narrow.ts";

const none: ReadonlySet<LayerName> = new Set();

/** The bay from above, always in sight: in hand, as it goes on paper, or one base of it; a section under it. */
export const PlanPart = (props: { readonly open: OpenDocument; readonly answers: Answers; readonly units: Units }) => {
  const { open, answers, units } = props;
  const { good, last } = answers;
  const [view, setView] = useState("in hand");
  const [on, setOn] = useState<ReadonlySet<LayerName>>(none);
  const [margins, setMargins] = useState<"asked" | "not-asked">("not-asked");
  const [size, setSize] = useState<"folded" | "large">("folded");
  const narrow = useNarrow();
  const job = good?.job ?? last?.found?.job;
  const layout = good?.assessment.layout ?? last?.found?.layout;
  const layers = useLayers(open.text, units, view === "in hand" ? on : none, margins);
  const toggle = (name: LayerName) =>
    setOn((before) => {
      const after = new Set(before);
      if (!after.delete(name)) after.add(name);
      // one kind of lines at a time, or none can be read
      if (name === "stress") after.delete("pressure");
      if (name === "pressure") after.delete("stress");
      return after;
    });
  const sides = layout?.bases.map(({ side }) => `${side} base`) ?? [];
  const base = layout?.bases.find(({ side }) => `${side} base` === view);
  const folded = narrow === "narrow" && size === "folded";
  const placing = layers.placing.value?.ok ? layers.placing.value.value : undefined;
  const stand = placing?.proposed?.stand ?? "as-wanted";
  const slab = layers.lines.value?.ok ? layers.lines.value.value : undefined;
  const map = layers.map.value?.ok ? layers.map.value.value : undefined;
  const drawnLayers = (letters: number) => (
    <>
      {slab && on.has(slab.what) && <SlabLinesLayer lines={slab} letters={letters} />}
      {placing && on.has("places") && (
        <Feasible
          regions={placing.ways.find((way) => way.stand === stand)?.regions ?? []}
          middle={placing.wanted?.middle}
          roomiest={placing.roomiest?.middle}
          figures={
            map?.points.map(({ at, ratio }) => ({
              at,
              words: ratio === undefined ? "–" : `${Math.round(ratio * 100)}`,
            })) ?? []
          }
          letters={letters}
        />
      )}
    </>
  );
  return (
    <section className="plan" data-size={folded ? "folded" : "open"} aria-labelledby="plan-title">
      <header>
        <h2 id="plan-title">{base ? `The ${base.side} base` : "The bay from above"}</h2>
        {narrow === "narrow" && (
          <button type="button" aria-expanded={!folded} onClick={() => setSize(size === "folded" ? "large" : "folded")}>
            {folded ? "Take the plan in hand" : "Fold the plan"}
          </button>
        )}
        {!folded && (
          <fieldset className="looks">
            <legend className="unseen">What the plan shows</legend>
            {["in hand", "as on paper", ...sides].map((each) => (
              <label key={each}>
                <input type="radio" name="look" checked={each === view} onChange={() => setView(each)} />
                {each}
              </label>
            ))}
          </fieldset>
        )}
      </header>
      <Stipple />
      {base && layout && job && !folded ? (
        <BasePlan base={base} layout={layout} job={job} units={units} />
      ) : view === "as on paper" && good && !folded ? (
        <SharedDrawing svg={good.drawing} />
      ) : (
        <>
          {!folded && (
            <fieldset className="looks">
              <legend>Lay over it</legend>
              {(Object.keys(layerNames) as LayerName[]).map((name) => (
                <label key={name}>
                  <input type="checkbox" checked={on.has(name)} onChange={() => toggle(name)} />
                  {layerNames[name]}
                </label>
              ))}
            </fieldset>
          )}
          <PlanHand
            open={open}
            layout={layout}
            job={job}
            units={units}
            layers={drawnLayers}
            bodies={on.has("bodies") && layers.bodies.value?.ok ? layers.bodies.value.value : []}
            board={folded ? "still" : "in-hand"}
          />
          {!folded && on.size > 0 && (
            <LayerWords layers={layers} on={on} units={units} margins={margins} onMargins={() => setMargins("asked")} />
          )}
        </>
      )}
      {!folded && good && <SectionView svg={good.section} />}
      {layout && job && <PlanWords layout={layout} job={job} units={units} />}
    </section>
  );
};
