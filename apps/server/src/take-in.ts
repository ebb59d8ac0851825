import { readJob, setFact } from "@floorworthy/job";
import { addToList, putInList } from "@floorworthy/job/editing";
import { StoreRefusal } from "@floorworthy/store";
import type { z } from "zod";
import type { fieldEntry } from "./shapes.ts";
import { titleOf } from "./title-of.ts";

type FieldEntry = z.output<typeof fieldEntry>;

const mistakesIn = (text: string): readonly string[] => {
  const reading = readJob(text);
  return reading.ok ? [] : reading.issues.map(({ path, message, hint }) => `${path}: ${message} ${hint}`.trim());
};

/**
 * The job's text with a field entry taken in.
 * @throws StoreRefusal when a job that could be read before could not be read after
 */
export const takeIn = ({ set, add }: Pick<FieldEntry, "set" | "add">, text: string) => {
  let taken = set.reduce((file, { path, value }) => setFact(file, path, value.trim() || "unknown"), text);
  for (const { list, entry, by } of add) {
    const longer = by ? putInList(taken, list, entry, by) : addToList(taken, list, entry);
    if (longer === undefined) throw new StoreRefusal(`Nothing can be added at "${list}" in this job.`);
    taken = longer;
  }
  const before = new Set(mistakesIn(text));
  const made = mistakesIn(taken).filter((mistake) => !before.has(mistake));
  if (before.size === 0 && made.length > 0) throw new StoreRefusal(made.join(" "));
  return { text: taken, title: titleOf("job", taken) };
};
