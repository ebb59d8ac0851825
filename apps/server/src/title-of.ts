import { writtenFacts } from "@floorworthy/job/listing";
import type { DocumentKind } from "@floorworthy/store";

/** What a document is called in a list; a text that cannot be read is kept and called so. */
export const titleOf = (kind: DocumentKind, text: string): string => {
  const path = kind === "job" ? "title" : "lift.name";
  const written = writtenFacts(text)
    .find((fact) => fact.path === path)
    ?.written.trim();
  return (written ?? "").slice(0, 200) || (kind === "job" ? "a job without a title" : "a lift without a name");
};
