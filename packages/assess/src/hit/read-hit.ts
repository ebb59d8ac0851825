import { readQuantity } from "@floorworthy/engine/quantities";
import type { Job } from "@floorworthy/job";
import { placedBases } from "../layout.ts";
import { lengthWords } from "../setout/length-words.ts";
import { type Hit, type Met, metWords } from "./hit.ts";
import { holeDepthOf, thicknessAt } from "./hole-facts.ts";

/** One mistake of the person who typed it, in one message. */
export interface HitMistake {
  readonly about: "hole" | "depth" | "met" | "owner";
  readonly got: string;
  readonly message: string;
}

interface Typed {
  readonly hole: string;
  readonly depth: string;
  readonly met: string;
  readonly owner?: string;
}

/** Reads what was typed; all mistakes at once. */
export const readHit = (job: Job, typed: Typed): Hit | readonly HitMistake[] => {
  const hole = holeNamed(job, typed.hole);
  const depth = depthOf(job, typed.depth, hole);
  const met = metOf(typed.met);
  const owner = ownerOf(typed.owner);
  const mistakes: HitMistake[] = [
    ...(hole ? [] : [{ about: "hole" as const, got: typed.hole, message: noHole(job, typed.hole) }]),
    ...(typeof depth === "number" ? [] : [{ about: "depth" as const, got: typed.depth, message: depth.message }]),
    ...(met
      ? []
      : [
          {
            about: "met" as const,
            got: typed.met,
            message: `"${typed.met}" is not a word of the list. Write one of: ${Object.keys(metWords).join(", ")}.`,
          },
        ]),
    ...(owner
      ? []
      : [
          {
            about: "owner" as const,
            got: typed.owner ?? "",
            message: `"${typed.owner}" is not a word of the list. Write agrees or refuses, or leave it out while nobody has asked.`,
          },
        ]),
  ];
  return hole && typeof depth === "number" && met && owner && mistakes.length === 0
    ? { hole, depth, met, owner }
    : mistakes;
};

const namesOf = (job: Job): string[] => placedBases(job).flatMap((base) => base.anchors.map(({ id }) => id));

const holeNamed = (job: Job, name: string): string | undefined =>
  namesOf(job).find((id) => id.toLowerCase() === name.trim().toLowerCase());

const noHole = (job: Job, name: string): string => {
  const names = namesOf(job);
  return names.length === 0
    ? "The place of the columns or the hole pattern is not known, so no hole has a name yet."
    : `There is no hole "${name}". Holes are named as on the set-out: ${names.join(", ")}.`;
};

const depthOf = (job: Job, text: string, hole: string | undefined): number | { readonly message: string } => {
  const read = readQuantity(text, "length");
  if (!read.ok) return { message: `${read.message} ${read.hint}` };
  const depth = read.value;
  const words = (mm: number): string => lengthWords(mm, job.units);
  if (!(depth > 0))
    return { message: "A depth is more than nothing: measure from the slab's top to where the drill stopped." };
  const asked = holeDepthOf(job);
  if (asked && depth >= asked.depth - 0.5)
    return {
      message: `${words(depth)} is the whole depth asked (${words(asked.depth)}): this hole was not stopped short.`,
    };
  const slab = hole ? thicknessAt(job, hole) : undefined;
  if (slab !== undefined && depth > slab)
    return {
      message: `${words(depth)} is more than the slab is thick there (${words(slab)} at most). Measure both again.`,
    };
  return depth;
};

const metOf = (text: string): Met | undefined => {
  const word = text.trim().toLowerCase();
  return Object.hasOwn(metWords, word) ? (word as Met) : undefined;
};

const ownerOf = (text: string | undefined): Hit["owner"] | undefined =>
  text === undefined ? "not-asked" : text === "agrees" || text === "refuses" || text === "not-asked" ? text : undefined;
