import { setPlain } from "@floorworthy/job/editing";
import { writtenTree } from "@floorworthy/job/listing";
import type { Candidate, FieldName } from "@floorworthy/manuals";
import { reach } from "../form/reach.ts";

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
  source: { readonly document: string; readonly candidate: Candidate | undefined },
): ((text: string) => string) => {
  const path = placeOf(field);
  if (path === undefined) return (text) => text;
  if (field === "base.width" || field === "base.depth") return (text) => setPlain(text, path, written);
  const { document, candidate } = source;
  const page = candidate && String(candidate.evidence.printed ?? candidate.evidence.page);
  const value = {
    value: written,
    basis: "documented",
    document,
    ...(page && { page }),
    ...(candidate && { line: candidate.evidence.line.slice(0, 200) }),
  };
  return (text) => setPlain(text, path, value);
};

/** Adds the picture of the line once it is there, where the value still stands as it was taken. */
export const putPicture =
  (field: FieldName, line: string, picture: string): ((text: string) => string) =>
  (text) => {
    const path = pathOf(field);
    const there = reach(writtenTree(text), `${path}.line`);
    return path !== "" && there === line.slice(0, 200) ? setPlain(text, `${path}.picture`, picture) : text;
  };

/** What stands in the sheet for a field already. */
export const pathOf = (field: FieldName): string => placeOf(field) ?? "";
