import { jobFields } from "@floorworthy/job/form";
import { useMemo } from "react";
import { Fold } from "../../fold.tsx";
import { FormGroup } from "../../form/form-field.tsx";
import { SharedDrawing } from "../../plan/shared-drawing.tsx";
import { useWork } from "../../work/use-work.ts";
import { WorkState } from "../../work/work-state.tsx";
import type { PartProps } from "../part-props.ts";
import { today } from "../today.ts";
import { VehicleAsk } from "../vehicle-ask.tsx";

const fields = jobFields as unknown as Parameters<typeof FormGroup>[0]["fields"];

/** The years after: rounds of the nuts, cracks, the vehicle of today. */
export const UpkeepPart = ({ open, units }: PartProps) => {
  const day = useMemo(today, []);
  const work = useWork("yearsPlan", [open.text, units, day], { pause: 300 });
  const plan = work.value?.ok ? work.value.value : undefined;
  const { upkeep, trend } = plan ?? {};
  return (
    <>
      <WorkState work={work} what="Reading the rounds" />
      {upkeep && (
        <section className="finding" aria-label="The years after">
          <p className="finding-said">{upkeep.sentence}</p>
          {upkeep.next && (
            <p>
              <b>Next round {upkeep.next.when}</b>: {upkeep.next.reason.words}.{" "}
              <span className="quiet">{upkeep.next.reason.basis}</span>
            </p>
          )}
          <ul>
            {[...upkeep.reasons, ...upkeep.notJudged].map((reason) => (
              <li key={reason}>{reason}</li>
            ))}
          </ul>
          {upkeep.steps.length > 0 && (
            <ol className="ticks-list">
              {upkeep.steps.map((step) => (
                <li key={step}>{step}</li>
              ))}
            </ol>
          )}
          <AnchorLines anchors={upkeep.anchors.filter(({ sentence }) => !upkeep.reasons.includes(sentence))} />
          {upkeep.cracks
            .filter(({ sentence }) => !upkeep.reasons.includes(sentence))
            .map(({ crack, sentence }) => (
              <p key={crack}>{sentence}</p>
            ))}
          {trend && <SharedDrawing svg={trend} />}
          {upkeep.torqueSays.map((line) => (
            <p key={line} className="quiet">
              {line}
            </p>
          ))}
        </section>
      )}
      {plan && <VehicleAsk text={open.text} units={units} day={day} classes={plan.classes} vehicles={plan.vehicles} />}
      <FormGroup path="" fields={fields} depth={0} only={["visits", "choices"]} />
    </>
  );
};

/** How many anchors are in sight before the rest is asked for. */
const IN_SIGHT = 6;

/** What the rounds say of each anchor, the first few in sight. */
const AnchorLines = ({ anchors }: { anchors: readonly { readonly anchor: string; readonly sentence: string }[] }) => {
  const list = (some: typeof anchors) => (
    <ul>
      {some.map(({ anchor, sentence }) => (
        <li key={anchor}>
          {!sentence.startsWith(anchor) && <b>{anchor}</b>} {sentence}
        </li>
      ))}
    </ul>
  );
  return (
    <>
      {anchors.length > 0 && list(anchors.slice(0, IN_SIGHT))}
      {anchors.length > IN_SIGHT && (
        <Fold
          name="more"
          head={`${anchors.length - IN_SIGHT} more ${anchors.length - IN_SIGHT === 1 ? "anchor" : "anchors"}`}
        >
          {list(anchors.slice(IN_SIGHT))}
        </Fold>
      )}
    </>
  );
};
