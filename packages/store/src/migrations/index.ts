import type { Migration } from "kysely";
import { documents } from "./1-documents.ts";
import { fieldEntries } from "./2-field-entries.ts";
import { people } from "./3-people.ts";

/** In order; one that has been released is never changed. */
export const migrations: Readonly<Record<string, Migration>> = {
  "1-documents": documents,
  "2-field-entries": fieldEntries,
  "3-people": people,
};
