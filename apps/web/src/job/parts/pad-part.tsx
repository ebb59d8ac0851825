import { jobFields } from "@floorworthy/job/form";
import { useState } from "react";
import { useForm } from "../../form/form-context.ts";
import { FormGroup } from "../../form/form-field.tsx";
import { useWork } from "../../work/use-work.ts";
import { WorkState } from "../../work/work-state.tsx";
import type { PartProps } from "../part-props.ts";
import { PadAnswerView } from "./pad-answer.tsx";

const fields = jobFields as unknown as Parameters<typeof FormGroup>[0]["fields"];

/** What would have to be poured under the columns, what the trade's habit gives, and what two more inches buy. */
export const PadPart = ({ open, answers, units }: PartProps) => {
  const { hand } = useForm();
  const [asked, setAsked] = useState<"asked" | "not-asked">("not-asked");
  const work = useWork("padPlan", asked === "asked" ? [open.text, units] : undefined, { pause: 400 });
  const plan = work.value?.ok ? work.value.value : undefined;
  const remedy = answers.good?.assessment.remedies[0];
  return (
    <>
      {asked === "not-asked" && (
        <p>
          {remedy && `${remedy.title}. `}
          <button type="button" className="decide" onClick={() => setAsked("asked")}>
            Find the cheapest pad that holds
          </button>{" "}
          <span className="quiet">It tries every buildable shape, size and depth; some seconds.</span>
        </p>
      )}
      <WorkState work={work} what="Trying designs" />
      {plan && (
        <PadAnswerView
          plan={plan}
          units={units}
          onTake={hand === "writes" ? () => open.change("", () => plan.written) : undefined}
        />
      )}
      <FormGroup path="" fields={fields} depth={0} only={["pad", "prices"]} />
    </>
  );
};
