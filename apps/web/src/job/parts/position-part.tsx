import { jobFields } from "@floorworthy/job/form";
import { FormField, FormGroup } from "../../form/form-field.tsx";
import type { PartProps } from "../part-props.ts";

const fields = jobFields as unknown as Parameters<typeof FormGroup>[0]["fields"];

/** Where the columns are wanted, and the bay around them. */
export const PositionPart = (_props: PartProps) => (
  <>
    <FormField path="columns" name="columns" field={jobFields.columns} depth={0} />
    <FormGroup path="" fields={fields} depth={0} only={["bay", "vehicles"]} />
  </>
);
