import {
  distance,
  nearestOnSegment,
  type Point,
  type Polygon,
  type Segment,
  sides,
} from "@floorworthy/engine/geometry";
import type { Block, Part } from "@floorworthy/engine/placement";
import { capital } from "@floorworthy/engine/quantities";
import type { Job, Lift } from "@floorworthy/job";
import { anchoring } from "../facts/anchoring.ts";
import { shown } from "../facts/print.ts";
import type { Constraint } from "./constraints.ts";
import type { Blocker } from "./placing.ts";

/**
 * Blocks of the lift with its middle at `place`: whose wish each is, in sentences. Of one thing and part the worst only; the
 * way in only where the vehicle at its place is clear.
 */
export const blockersOf = (
  job: Job,
  constraints: readonly Constraint[],
  blocks: readonly Block[],
  place: Point,
): Blocker[] => {
  const all = blocks.map((block): Blocker => {
    const own = constraints.find(({ id }) => id === block.id);
    const standing = own?.standing ?? (block.clear > 0 && isHeld(job.lift, block.part) ? "maker" : "practice");
    const { id, name, part, clear: asked, distance: there } = block;
    const at = nearestOn(own?.shape ?? edgeOf(job, id), place);
    return { id, name, part, standing, asked, there, at, sentence: sentenceOf(job, block, standing) };
  });
  const first = all.filter((b, i) => all.findIndex(({ name, part }) => name === b.name && part === b.part) === i);
  const met = new Set(first.filter(({ part }) => part === "vehicle").map(({ name }) => name));
  return first.filter(({ name, part }) => part !== "path" || !met.has(name));
};

/** The floor's own edge, named by its number in the engine's room. */
const edgeOf = ({ bay }: Job, id: string): Segment | undefined => {
  const number = /^wall-(\d+)$/.exec(id)?.[1];
  return number === undefined ? undefined : sides(bay.outline ?? [])[Number(number) - 1];
};

const nearestOn = (shape: Segment | Polygon | undefined, place: Point): Point | undefined => {
  if (!shape) return undefined;
  const lines = "a" in shape ? [shape] : sides(shape);
  return lines
    .map((line) => nearestOnSegment(place, line))
    .reduce<Point | undefined>((a, b) => (a && distance(a, place) <= distance(b, place) ? a : b), undefined);
};

const isHeld = (lift: Lift, part: Part): boolean => part === (anchoring(lift) === "loose" ? "plates" : "anchors");

const partWords: Readonly<Record<Part, string>> = {
  anchors: "an anchor",
  plates: "what stands on the floor",
  body: "the lift",
  vehicle: "the vehicle",
  path: "the vehicle on its way in",
};

const sentenceOf = (
  { units }: Job,
  { id, name, part, clear, distance }: Block,
  standing: Blocker["standing"],
): string => {
  const length = (mm: number): string => shown(mm, "length", units);
  const who = partWords[part];
  if (id === "room") return `The lift would reach ${distance < 0 ? length(-distance) : "partly"} beyond the walls.`;
  const asks =
    clear > 0 ? ` (${length(clear)} ${standing === "maker" ? "asked by the maker" : "by common practice"})` : "";
  return distance < 0
    ? `${capital(who)} would be over ${name} by ${length(-distance)}${asks}.`
    : `${capital(who)} would be ${length(distance)} from ${name}${asks}.`;
};

/** Names of what blocks, each once. */
export const blockerNames = (blockers: readonly Blocker[]): string => {
  const names = [...new Set(blockers.map(({ name }) => name))];
  return names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
};
