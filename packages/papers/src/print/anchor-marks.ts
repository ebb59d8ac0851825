import type { PlacedBase } from "@floorworthy/assess";

/** A name of at most this many letters fits beside a hole. */
const SHORT = 4;

/** First letters of the words of a base's name, then the hole: "left front post 3" is LFP3. */
const initials = (side: string, id: string): string =>
  side
    .split(/\s+/)
    .map((word) => (/^\d+$/.test(word) ? word : word.charAt(0).toUpperCase()))
    .join("") + id.slice(side.length).trim();

/** A short mark for every anchor of a lift, for keys and tables; by the number of its base where first letters are not enough. */
export const anchorMarks = (bases: readonly PlacedBase[]): ReadonlyMap<string, string> => {
  const named = bases.flatMap(({ side, anchors }, i) =>
    anchors.map(({ id }) => ({
      id,
      short: id.length <= SHORT ? id : initials(side, id),
      counted: `${i + 1}.${id.slice(side.length).trim() || id}`,
    })),
  );
  const enough = new Set(named.map(({ short }) => short)).size === named.length;
  return new Map(named.map(({ id, short, counted }) => [id, enough ? short : counted]));
};
