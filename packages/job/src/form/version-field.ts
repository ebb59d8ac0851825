import type { Field } from "../fields/index.ts";

/** `floorworthy: 1`. It is judged before anything else is read (reading/migrate.ts). */
export const versionField: Field<1> = {
  shape: { kind: "version" },
  doc: "version of this form; the first line of every file",
  need: "required",
  absent: () => 1,
  read: () => 1,
};
