import type { Block, Part } from "@floorworthy/engine/placement";
import type { Job, Lift } from "@floorworthy/job";
import { shown } from "../facts/print.ts";
import { anchoring } from "./anchoring.ts";
import type { Constraint } from "./constraints.ts";
import type { Blocker } from "./placing.ts";

/** Blocks with whose wish they are, in sentences; of one thing and part, the worst only; the way in only where the vehicle at its place is clear. */
export const blockersOf = (job: Job, constraints: readonly Constraint[], blocks: readonly Block[]): Blocker[] => {
  const all = blocks.map((block): Blocker => {
    const standing =
      constraints.find(({ id }) => id === block.id)?.standing ??
      (block.clear > 0 && isHeld(job.lift, block.part) ? "maker" : "practice");
    const { id, name, part, clear: asked, distance: there } = block;
    return { id, name, part, standing, asked, there, sentence: sentenceOf(job, block, standing) };
  });
  const first = all.filter((b, i) => all.findIndex(({ name, part }) => name === b.name && part === b.part) === i);
  const met = new Set(first.filter(({ part }) => part === "vehicle").map(({ name }) => name));
  return first.filter(({ name, part }) => part !== "path" || !met.has(name));
};

const isHeld = (lift: Lift, part: Part): boolean => part === (anchoring(lift) === "loose" ? "plates" : "anchors");

const partWords: Readonly<Record<Part, readonly [string, string]>> = {
  anchors: ["an anchor", "is"],
  plates: ["what stands on the floor", "is"],
  body: ["the lift", "is"],
  vehicle: ["the vehicle", "is"],
  path: ["the vehicle on its way in", "is"],
};

const sentenceOf = (
  { units }: Job,
  { id, name, part, clear, distance }: Block,
  standing: Blocker["standing"],
): string => {
  const length = (mm: number): string => shown(mm, "length", units);
  const who = partWords[part][0];
  if (id === "room") return `The lift would reach ${distance < 0 ? length(-distance) : "partly"} beyond the walls.`;
  const asks =
    clear > 0 ? ` (${length(clear)} ${standing === "maker" ? "asked by the maker" : "by common practice"})` : "";
  return distance < 0
    ? `${capital(who)} would be over ${name} by ${length(-distance)}${asks}.`
    : `${capital(who)} would be ${length(distance)} from ${name}${asks}.`;
};

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Names of what blocks, each once. */
export const blockerNames = (blockers: readonly Blocker[]): string => {
  const names = [...new Set(blockers.map(({ name }) => name))];
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
};
