import { setPlain } from "@floorworthy/job/editing";
import type { Candidate, FieldName } from "@floorworthy/manuals";

/** Values the sheet keeps in a place of their own; those without one are for the reader only. */
const placeOf = (field: FieldName): string | undefined => {
  if (field === "base.width" || field === "base.depth") return `lift.base.outline.${field.slice(5)}`;
  if (/^(reactions\.|anchors\.(count|pattern)|weight$|power$)/.test(field)) return undefined;
  return `lift.${field}`;
};

export const hasPlace = (field: FieldName): boolean => placeOf(field) !== undefined;

/** Where in a lift sheet's text a confirmed value goes, with the line of the manual it came from. */
export const putValue = (
  field: FieldName,
  written: string,
  source: {
    readonly document: string;
    readonly candidate: Candidate | undefined;
    readonly picture: string | undefined;
  },
): ((text: string) => string) => {
  const path = placeOf(field);
  if (path === undefined) return (text) => text;
  if (field === "base.width" || field === "base.depth") return (text) => setPlain(text, path, written);
  const { document, candidate, picture } = source;
  const page = candidate && String(candidate.evidence.printed ?? candidate.evidence.page);
  const value = {
    value: written,
    basis: "documented",
    document,
    ...(page && { page }),
    ...(candidate && { line: candidate.evidence.line.slice(0, 200) }),
    ...(picture && { picture }),
  };
  return (text) => setPlain(text, path, value);
};

/** What stands in the sheet for a field already. */
export const pathOf = (field: FieldName): string => placeOf(field) ?? "";
