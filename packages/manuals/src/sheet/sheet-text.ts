import type { Candidate } from "../candidates/index.ts";

/** One key of the sheet. */
export interface Branch {
  readonly path: readonly string[];
  /** written as it stands */
  readonly plain?: string;
  /** a fact with its page */
  readonly candidate?: Candidate;
  /** candidates a plain value was made from */
  readonly seen?: readonly Candidate[];
  /** one item of a list */
  readonly items?: readonly Branch[];
}

/** Keys in the order of the form. */
const ORDER =
  "name kind manual edition fixing top arms columnTurn rated columnWeight spacing tieHeight overallHeight overallWidth pickupHeight fullHeight base outline thickness anchors holes product sheet diameter length nominalEmbedment effectiveEmbedment holeDiameter holeDepth torque firstRound roundEvery shimLimit asks strength days edge joint crack wall reinforcement slope ceiling reactions P Min Mfa Vu Vv".split(
    " ",
  );

const rank = (key: string): number => ORDER.indexOf(key);

/** A lift sheet as YAML; beside each fact its page, above it the line as printed. */
export const sheetText = (branches: readonly Branch[], document: string): string =>
  [
    "# Proposed from the maker's manual; each line is to be compared with its page before it is used.",
    "floorworthy: 1",
    "lift:",
    ...level(branches, 0, 1, document),
    "",
  ].join("\n");

const level = (branches: readonly Branch[], depth: number, indent: number, document: string): readonly string[] => {
  const keys = [...new Set(branches.map(({ path }) => path[depth]!))].sort((a, b) => rank(a) - rank(b));
  const pad = "  ".repeat(indent);
  return keys.flatMap((key) => {
    const below = branches.filter(({ path }) => path[depth] === key);
    const leaf = below.find(({ path }) => path.length === depth + 1);
    if (!leaf) return [`${pad}${key}:`, ...level(below, depth + 1, indent + 1, document)];
    if (leaf.items) return [`${pad}${key}:`, ...listOf(leaf.items, indent + 1, document)];
    return lines(leaf, key, pad, document);
  });
};

const listOf = (items: readonly Branch[], indent: number, document: string): readonly string[] => [
  `${"  ".repeat(indent)}- name: as the manual states`,
  ...level(items, 0, indent + 1, document),
];

const lines = (
  { plain, candidate, seen = [] }: Branch,
  key: string,
  pad: string,
  document: string,
): readonly string[] => {
  if (candidate === undefined) return [...new Set(seen.map((c) => comment(c, pad))), `${pad}${key}: ${plain}`];
  return [
    comment(candidate, pad),
    `${pad}${key}: { ${writtenAs(candidate)}, basis: documented, document: ${JSON.stringify(document)}, page: ${JSON.stringify(pageOf(candidate))} }`,
  ];
};

const comment = ({ evidence }: Candidate, pad: string): string =>
  `${pad}# page ${evidence.page}: ${evidence.line.replace(/\p{Cc}|\s+/gu, " ").slice(0, 160)}`;

const pageOf = ({ evidence: { page, printed } }: Candidate): string =>
  printed === undefined || printed === String(page) ? String(page) : `${page} (printed ${printed})`;

const writtenAs = ({ found, written }: Candidate): string => {
  if (found.kind === "word") return `value: ${JSON.stringify(found.value)}`;
  const [low, high] = written.split(" to ");
  return high === undefined
    ? `value: ${JSON.stringify(written)}`
    : `low: ${JSON.stringify(low)}, high: ${JSON.stringify(high)}`;
};
