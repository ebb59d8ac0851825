import { jobFields } from "@floorworthy/job/form";
import { FormGroup } from "../../form/form-field.tsx";
import type { PartProps } from "../part-props.ts";

const fields = jobFields as unknown as Parameters<typeof FormGroup>[0]["fields"];

export const PadPart = (_props: PartProps) => <FormGroup path="" fields={fields} depth={0} only={["pad", "prices"]} />;
