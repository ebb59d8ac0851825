import { useForm } from "../../form/form-context.ts";
import { LiftForm } from "../../form/lift-form.tsx";
import { LiftsAsk } from "../lifts-ask.tsx";
import type { PartProps } from "../part-props.ts";
import { TakeLift, useLifts } from "../take-lift.tsx";

/** The lift: taken from the catalogue, or typed from its maker's floor page. */
export const LiftPart = ({ open, units }: PartProps) => {
  const { hand } = useForm();
  const { lifts, fault } = useLifts();
  return (
    <>
      {hand === "writes" && lifts.length > 0 && <TakeLift id="take-lift" open={open} lifts={lifts} />}
      {fault && <p role="alert">{fault}</p>}
      <LiftForm path="lift" />
      {lifts.length > 0 && <LiftsAsk text={open.text} units={units} lifts={lifts} />}
    </>
  );
};
