import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Assessment, assess } from "@floorworthy/assess";
import { type Job, type KnownQuantity, readJob } from "@floorworthy/job";

const folder = join(import.meta.dirname, "../../examples");

export const jobOf = (name: string): Job => {
  const load = (file: string) => readFileSync(join(folder, file), "utf8");
  const read = readJob(load(`${name}.yaml`), { name, load });
  if (!read.ok) throw new Error(read.issues.map((issue) => issue.message).join("\n"));
  return read.job;
};

const kept = new Map<string, Assessment>();

/** An example's assessment, computed once per file of tests. */
export const assessmentOf = (name: string): Assessment => {
  const made = kept.get(name) ?? assess(jobOf(name));
  kept.set(name, made);
  return made;
};

export const known = (value: number): KnownQuantity => ({
  known: true,
  value,
  low: value,
  high: value,
  basis: { kind: "stated" },
  written: String(value),
});
