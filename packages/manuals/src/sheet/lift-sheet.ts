import type { LiftKind } from "@floorworthy/job";
import type { Candidate, FieldName } from "../candidates/index.ts";
import { type Proposal, proposalsFor } from "./proposals.ts";
import { inWords, questions } from "./questions.ts";
import { type Branch, sheetText } from "./sheet-text.ts";

export interface Asked {
  readonly field: FieldName | "anchors.holes";
  /** one sentence for a person */
  readonly question: string;
}

export interface LiftSheet {
  /** YAML that readLift reads */
  readonly text: string;
  /** what the manual does not say, or says in two ways of which neither is safer */
  readonly asked: readonly Asked[];
  /** one sentence for each value that a person must look at */
  readonly doubts: readonly string[];
  /** line by line, what was taken and what else the manual says */
  readonly proposals: readonly Proposal[];
}

export interface SheetOptions {
  /** the lift's name; the model when left out */
  readonly name?: string;
  /** the manual's name, as the sheet cites it */
  readonly document?: string;
}

/** The lift sheet of one model: only what the manual says and nobody needs to doubt; the rest is asked. */
export const liftSheet = (
  candidates: readonly Candidate[],
  model?: string,
  { name = model ?? "Lift without a name", document = "the maker's manual" }: SheetOptions = {},
): LiftSheet => {
  const proposals = proposalsFor(candidates, model);
  const taken = new Map(proposals.flatMap((p) => (p.taken ? [[p.field, p.taken] as const] : [])));
  const holes = holesOf(taken);
  return {
    text: sheetText(branches(taken, holes, name), document),
    asked: askedOf(proposals, taken, holes),
    doubts: doubtsOf(proposals),
    proposals,
  };
};

/** The manuals read are those of two-post lifts. */
const KIND: LiftKind = "two-post";

/** Lines of the sheet that have no place of their own in the form. */
const ELSEWHERE: readonly FieldName[] = [
  "anchors.count",
  "anchors.patternAcross",
  "anchors.patternAlong",
  "columnsInside",
  "weight",
  "power",
  "base.width",
  "base.depth",
];

const branches = (
  taken: ReadonlyMap<FieldName, Candidate>,
  holes: readonly string[],
  name: string,
): readonly Branch[] => {
  const leaf = ([field, candidate]: readonly [FieldName, Candidate]): Branch => ({ path: field.split("."), candidate });
  const [width, depth] = [taken.get("base.width"), taken.get("base.depth")];
  const reactions = [...taken].filter(([field]) => field.startsWith("reactions."));
  return [
    { path: ["name"], plain: JSON.stringify(name) },
    { path: ["kind"], plain: KIND },
    { path: ["manual"], plain: "in-hand" },
    ...[...taken].filter(([field]) => !ELSEWHERE.includes(field) && !field.startsWith("reactions.")).map(leaf),
    ...(width && depth
      ? [
          {
            path: ["base", "outline"],
            plain: `{ width: ${quoted(width)}, depth: ${quoted(depth)} }`,
            seen: [width, depth],
          },
        ]
      : []),
    ...(holes.length > 0
      ? [{ path: ["anchors", "holes"], plain: `[${holes.join(", ")}]`, seen: [taken.get("anchors.patternAcross")!] }]
      : []),
    ...(reactions.length > 0
      ? [
          {
            path: ["reactions"],
            items: reactions.map(([field, candidate]) => ({ path: [field.slice(10)], candidate })),
          },
        ]
      : []),
  ];
};

const quoted = ({ written }: Candidate): string => JSON.stringify(written);

const lengthOf = (candidate: Candidate | undefined): number =>
  candidate?.found.kind === "number" ? candidate.found.value : 0;

/** Four holes in a rectangle are known from its sides. */
const holesOf = (taken: ReadonlyMap<FieldName, Candidate>): readonly string[] => {
  const [across, along] = [lengthOf(taken.get("anchors.patternAcross")), lengthOf(taken.get("anchors.patternAlong"))];
  if (across === 0 || along === 0 || lengthOf(taken.get("anchors.count")) !== 4) return [];
  const half = (mm: number) => `${Number((mm / 2).toFixed(2))} mm`;
  return [-1, 1].flatMap((u) =>
    [-1, 1].map((v) => `[${u < 0 ? "-" : ""}${half(across)}, ${v < 0 ? "-" : ""}${half(along)}]`),
  );
};

const askedOf = (
  proposals: readonly Proposal[],
  taken: ReadonlyMap<FieldName, Candidate>,
  holes: readonly string[],
): readonly Asked[] =>
  questions.flatMap(([field, words]): readonly Asked[] => {
    if (field === "anchors.holes") return holes.length > 0 ? [] : [{ field, question: `Measure ${words}.` }];
    if (taken.has(field)) return [];
    const open = proposals.find((p) => p.field === field);
    if (!open) return [{ field, question: `Not found: ${words}.` }];
    const says = open.all.map(({ written, evidence }) => `${written} (page ${evidence.page})`).join(" or ");
    return [{ field, question: `Open: ${words}. The manual says ${says}.` }];
  });

const doubtsOf = (proposals: readonly Proposal[]): readonly string[] =>
  proposals.flatMap(({ field, taken, all }) =>
    all.flatMap((candidate) => {
      const place = `${inWords(field)}, page ${candidate.evidence.page}: ${candidate.written}`;
      const remarks = candidate.remarks.map(({ message, hint }) => `${place}. ${message} ${hint}`);
      const against =
        candidate === taken && candidate.conflicts.length > 0
          ? [
              `${place}. ${candidate.reasons.filter((r) => /^page \d/.test(r)).join("; ")}. The more demanding one is proposed.`,
            ]
          : [];
      return [...remarks, ...against];
    }),
  );
