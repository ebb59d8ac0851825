import { isScalar, isSeq, type Node, Pair, Scalar, YAMLMap } from "yaml";
import { at, type Place, report, warn } from "./place.ts";

/** One step from a format version to the next, made on the tree so that every value keeps its line. */
interface Migration {
  readonly from: number;
  readonly to: number;
  /** what changed, for the person who wrote the older file */
  readonly what: string;
  readonly change: (root: YAMLMap) => void;
}

export const NEWEST = 1;

const pairOf = (map: unknown, key: string): Pair<Scalar, Node | null> | undefined =>
  map instanceof YAMLMap
    ? (map.items.find((pair) => isScalar(pair.key) && pair.key.value === key) as Pair<Scalar, Node | null> | undefined)
    : undefined;

const rename = (map: unknown, from: string, to: string): void => {
  const pair = pairOf(map, from);
  if (pair && !pairOf(map, to)) pair.key.value = to;
};

/** Version 0 was the draft: `slab` for `floor`, `capacity` for `rated`, columns as a bare list of two places. */
const fromDraft = (root: YAMLMap): void => {
  rename(root, "slab", "floor");
  rename(pairOf(root, "lift")?.value, "capacity", "rated");
  const columns = pairOf(root, "columns");
  if (!columns || !isSeq(columns.value) || columns.value.items.length !== 2) return;
  const [left, right] = columns.value.items;
  const named = new YAMLMap();
  named.items.push(new Pair(new Scalar("left"), left), new Pair(new Scalar("right"), right));
  named.range = columns.value.range ?? null;
  columns.value = named as unknown as Node;
};

export const migrations: readonly Migration[] = [
  {
    from: 0,
    to: 1,
    what: "slab is now floor, lift.capacity is now lift.rated, columns are named left and right",
    change: fromDraft,
  },
];

const versionOf = (root: YAMLMap, place: Place): number | undefined => {
  const pair = pairOf(root, "floorworthy");
  const value = isScalar(pair?.value) ? pair.value.value : undefined;
  const there = at(place, "floorworthy");
  if (pair === undefined || value === null || value === undefined) {
    report(there, pair?.key, "missing-version", {
      message: "The version line is missing.",
      hint: `Begin the file with the line floorworthy: ${NEWEST}.`,
    });
    return undefined;
  }
  const version = /^\d{1,6}$/.test(String(value)) ? Number(value) : undefined;
  if (version !== undefined && version <= NEWEST) return version;
  const newer = version !== undefined;
  report(there, pair.value, "unknown-version", {
    got: String(value),
    message: `The version "${String(value).slice(0, 40)}" is not known here.`,
    hint: newer ? "The file is from a newer program: use that one." : `Write floorworthy: ${NEWEST}.`,
  });
  return undefined;
};

/** Brings a tree to the newest version. An unknown or missing version is reported and the tree read as the newest. */
export const migrate = (root: YAMLMap, place: Place): void => {
  const version = versionOf(root, place);
  if (version === undefined) return;
  for (const { from, to, what, change } of migrations) {
    if (from < version) continue;
    change(root);
    warn(at(place, "floorworthy"), pairOf(root, "floorworthy")?.value, "older-format", {
      got: String(from),
      message: `The file is of version ${from} and was read as version ${to}: ${what}.`,
      hint: `Change it and write floorworthy: ${to}.`,
    });
  }
};
