import { z } from "zod";
import type { AnyField } from "../fields/field.ts";
import { jobFields, liftSheetFields } from "../form/index.ts";
import { zodOf } from "./zod-of.ts";

const asGroup = (fields: object): AnyField => ({
  shape: { kind: "group", fields: fields as Readonly<Record<string, AnyField>> },
  doc: "",
  need: "required",
  read: () => undefined,
  absent: () => undefined,
});

/** The job file as parsed YAML or JSON. It checks the form; readJob also checks the sense, and says where. */
export const jobFileSchema = zodOf(asGroup(jobFields));

/** A lift sheet on its own. */
export const liftSheetSchema = zodOf(asGroup(liftSheetFields));

const publish = (schema: z.ZodType, title: string): object => ({
  ...z.toJSONSchema(schema, { target: "draft-2020-12", io: "input", reused: "ref" }),
  title,
});

/** JSON Schema (draft 2020-12) of the job file, as published in packages/job/job.schema.json. */
export const jobJsonSchema = (): object => publish(jobFileSchema, "Floorworthy job file, version 1");

/** JSON Schema (draft 2020-12) of a lift sheet. */
export const liftJsonSchema = (): object => publish(liftSheetSchema, "Floorworthy lift sheet, version 1");
