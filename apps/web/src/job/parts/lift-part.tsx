import { putLift } from "@floorworthy/job/editing";
import { jobFields } from "@floorworthy/job/form";
import { useEffect, useState } from "react";
import { type Heading, listDocuments, readDocument } from "../../api/documents.ts";
import { useForm } from "../../form/form-context.ts";
import { FormField } from "../../form/form-field.tsx";
import { LiftsAsk } from "../lifts-ask.tsx";
import type { PartProps } from "../part-props.ts";

/** The lift: taken from the catalogue, or typed from its maker's floor page. */
export const LiftPart = ({ open, units }: PartProps) => {
  const { hand } = useForm();
  const [lifts, setLifts] = useState<readonly Heading[]>([]);
  const [fault, setFault] = useState<string>();
  useEffect(() => {
    listDocuments("lifts")
      .then(setLifts)
      .catch((error: Error) => setFault(error.message));
  }, []);
  const take = (id: string) =>
    readDocument("lifts", id)
      .then(({ text }) => open.change("", (job) => putLift(job, text) ?? job))
      .catch((error: Error) => setFault(error.message));
  return (
    <>
      {hand === "writes" && lifts.length > 0 && (
        <div className="row">
          <label htmlFor="take-lift">
            Take a lift from the catalogue
            <span className="row-doc">its sheet is copied into this job, which keeps that edition</span>
          </label>
          <div className="row-hand">
            <select id="take-lift" value="" onChange={({ target }) => target.value && take(target.value)}>
              <option value="">choose …</option>
              {lifts.map(({ id, title }) => (
                <option key={id} value={id}>
                  {title}
                </option>
              ))}
            </select>
          </div>
        </div>
      )}
      {fault && <p role="alert">{fault}</p>}
      <LiftsAsk text={open.text} units={units} lifts={lifts} />
      <FormField path="lift" name="lift" field={jobFields.lift} depth={0} />
    </>
  );
};
