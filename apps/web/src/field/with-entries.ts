import { addToList, putInList, setFact } from "@floorworthy/job/editing";
import type { EntryBody } from "./entries.ts";

/** A job's text as it will be when these entries have been taken; one that finds no place is left out. */
export const withEntries = (text: string, entries: readonly Pick<EntryBody, "set" | "add">[]): string =>
  entries.reduce((before, { set, add }) => {
    const facts = set.reduce((file, { path, value }) => setFact(file, path, value || "unknown"), before);
    return add.reduce(
      (file, { list, entry, by }) =>
        (by.length > 0 ? putInList(file, list, entry, by) : addToList(file, list, entry)) ?? file,
      facts,
    );
  }, text);
