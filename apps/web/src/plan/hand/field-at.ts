import type { AnyField } from "@floorworthy/job/fields";
import { jobFields } from "@floorworthy/job/form";

/** The declaration of the field at a path of the job file; undefined where there is none. */
export const fieldAt = (path: string): AnyField | undefined =>
  [...path.matchAll(/([A-Za-z][\w-]*)|\[\d+\]/g)].reduce<AnyField | undefined>(
    (field, [, key]) => {
      const shape = field?.shape;
      if (key === undefined) return shape?.kind === "list" ? shape.of : undefined;
      return shape?.kind === "group" ? shape.fields[key] : undefined;
    },
    { shape: { kind: "group", fields: jobFields as unknown as Record<string, AnyField> } } as AnyField,
  );
