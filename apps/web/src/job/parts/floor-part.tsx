import { jobFields } from "@floorworthy/job/form";
import { FormField, FormGroup } from "../../form/form-field.tsx";
import type { PartProps } from "../part-props.ts";

const fields = jobFields as unknown as Parameters<typeof FormGroup>[0]["fields"];

/** What is known of the floor, and how. */
export const FloorPart = (_props: PartProps) => (
  <>
    <FormGroup path="" fields={fields} depth={0} only={["title", "customer", "place", "date", "setting"]} />
    <FormField path="floor" name="floor" field={jobFields.floor} depth={0} />
  </>
);
