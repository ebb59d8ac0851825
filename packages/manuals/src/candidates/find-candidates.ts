import type { Box, PageSource } from "../glyphs/index.ts";
import type { LaidOutPage, PrintedLine } from "../layout/index.ts";
import type { Candidate, Confidence, NumberFound, WordFound } from "./candidate.ts";
import type { Claim } from "./claim.ts";
import { claimNumbers } from "./claim-numbers.ts";
import { claimCount, claimPower, claimWords } from "./claim-words.ts";
import { withConflicts, withNotes, withThinSlabs, withTorqueChecked } from "./conflicts.ts";
import { type FieldName, fieldNames } from "./field-names.ts";
import { modelsOf, namedIn } from "./models.ts";
import { claimPounds } from "./pounds-of-concrete.ts";
import type { Statement } from "./statement.ts";
import { statementsOf, type UnderHeading } from "./statements.ts";

export interface Findings {
  readonly models: readonly string[];
  /** in the order of the lift sheet, then of the pages */
  readonly candidates: readonly Candidate[];
}

type Numbered = Candidate & { readonly form: Statement["form"] };

/** Lines of a manual → values for the lift sheet, each with its place, its doubts and what contradicts it. */
export const findCandidates = (pages: readonly LaidOutPage[]): Findings => {
  const named = modelsOf(pages);
  const models = named.length > 1 ? named : [];
  const heading: UnderHeading = { models: [], lead: [] };
  const raw = pages.flatMap((page) =>
    statementsOf(page, models, heading).flatMap((statement) => ofStatement(statement, page, models)),
  );
  const kept = inSheetOrder(withoutRepeats(sameForAll(raw, models)));
  const forms = new Map<string, Statement["form"]>();
  const numbered = kept.map(({ form, ...candidate }, i) => {
    const id = `${candidate.field}#${i + 1}`;
    forms.set(id, form);
    return { ...candidate, id };
  });
  const isNote = (id: string) => forms.get(id) === "note";
  const candidates = withTorqueChecked(withThinSlabs(withNotes(withConflicts(numbered, isNote), isNote)));
  return { models: named, candidates };
};

const claimsOf = (statement: Statement): readonly Claim[] => [
  ...claimPounds(statement),
  ...claimNumbers(statement),
  ...claimWords(statement),
  ...claimCount(statement),
  ...claimPower(statement),
];

const ofStatement = (statement: Statement, page: LaidOutPage, models: readonly string[]): readonly Numbered[] =>
  claimsOf(statement).flatMap((claim) =>
    scopeOf(claim, statement, models).map((model) => toCandidate(claim, statement, page, model)),
  );

/** The model a value holds for: the one named nearest in its sentence, else its column's or heading's, else all. */
const scopeOf = (claim: Claim, statement: Statement, models: readonly string[]): readonly (string | undefined)[] => {
  const named = namedIn(statement.text, models);
  if (named.length === 0 || statement.form === "cell")
    return statement.models.length > 0 ? statement.models : [undefined];
  const distinct = new Set(named.map(({ name }) => name));
  if (distinct.size === models.length && listed(statement.text, named)) return [undefined];
  if (listed(statement.text, named)) return [...distinct];
  const near = [...named].sort((a, b) => gapTo(a.at, claim) - gapTo(b.at, claim))[0]!;
  return [near.name];
};

const gapTo = (at: number, { from, to }: Claim): number => (at >= to ? at - to : from - at);

/** Models named one after the other share what is said of them. */
const listed = (text: string, named: readonly { readonly name: string; readonly at: number }[]): boolean =>
  named.every(
    (m, i) =>
      i === 0 ||
      /^[\s,/&]*(?:and|or)?\s*(?:models? )?$/i.test(text.slice(named[i - 1]!.at + named[i - 1]!.name.length, m.at)),
  );

const found = ({ said }: Claim): NumberFound | WordFound =>
  typeof said === "string"
    ? { kind: "word", value: said }
    : { kind: "number", dimension: said.dimension, value: said.value, low: said.low, high: said.high };

const written = ({ said }: Claim): string =>
  typeof said === "string"
    ? said
    : typeof said.written === "string"
      ? said.written
      : `${said.written.low} to ${said.written.high}`;

/** What was recognised from a picture stays doubtful: a fraction bar is easily lost. */
const trusted = (claim: Claim, source: PageSource): Confidence => (source === "text" ? claim.confidence : "doubtful");

const toCandidate = (claim: Claim, statement: Statement, page: LaidOutPage, model: string | undefined): Numbered => {
  const line = seenOn(claim, statement);
  const recognised = {
    code: "recognised" as const,
    message: "The page is a picture and was recognised; fraction bars and signs are easily lost.",
    hint: "Compare the value with the picture of the line.",
  };
  return {
    id: "",
    field: claim.field,
    found: found(claim),
    written: written(claim),
    ...(model !== undefined && { model }),
    evidence: {
      page: page.number,
      ...(page.printed !== undefined && { printed: page.printed }),
      box: roomy(line.box, page),
      line: line.text,
    },
    confidence: trusted(claim, page.source),
    reasons: claim.reasons,
    remarks: page.source === "text" ? claim.remarks : [...claim.remarks, recognised],
    conflicts: [],
    form: statement.form,
  };
};

/** The printed lines from the words to the value, as one: what a person must see to believe it. */
const seenOn = (claim: Claim, statement: Statement): PrintedLine => {
  const [from, to] = [
    Math.min(claim.from, claim.named?.[0] ?? claim.from),
    Math.max(claim.from, (claim.named?.[1] ?? 1) - 1),
  ];
  const lines: PrintedLine[] = [];
  for (let place = from; place <= to; place++) {
    const line = statement.lineAt(place);
    if (lines.at(-1) !== line && line.page === statement.lineAt(claim.from).page) lines.push(line);
  }
  const [x, y] = [Math.min(...lines.map(({ box }) => box.x)), Math.min(...lines.map(({ box }) => box.y))];
  const width = Math.max(...lines.map(({ box }) => box.x + box.width)) - x;
  const height = Math.max(...lines.map(({ box }) => box.y + box.height)) - y;
  return { page: lines[0]!.page, text: lines.map(({ text }) => text).join(" / "), box: { x, y, width, height } };
};

/** A little paper around the letters. */
const roomy = (box: Box, page: LaidOutPage): Box => {
  const x = Math.max(0, box.x - 3);
  const y = Math.max(0, box.y - 2);
  return { x, y, width: Math.min(page.width - x, box.width + 6), height: Math.min(page.height - y, box.height + 4) };
};

const keyOf = (c: Candidate): string => `${c.field}|${c.found.value}|${c.evidence.page}|${c.evidence.line}`;

/** A row that says the same for every model says it for all. */
const sameForAll = (candidates: readonly Numbered[], models: readonly string[]): readonly Numbered[] => {
  if (models.length < 2) return candidates;
  const groups = new Map<string, Numbered[]>();
  for (const candidate of candidates)
    groups.set(keyOf(candidate), [...(groups.get(keyOf(candidate)) ?? []), candidate]);
  return candidates.flatMap((candidate) => {
    const group = groups.get(keyOf(candidate))!;
    const all = models.every((model) => group.some((c) => c.model === model));
    if (!all) return [candidate];
    const { model: _, ...rest } = candidate;
    return group[0] === candidate ? [rest] : [];
  });
};

const withoutRepeats = (candidates: readonly Numbered[]): readonly Numbered[] => {
  const seen = new Set<string>();
  return candidates.filter((candidate) => {
    const key = `${keyOf(candidate)}|${candidate.model ?? ""}`;
    return seen.has(key) ? false : Boolean(seen.add(key));
  });
};

const order = new Map<FieldName, number>(fieldNames.map((field, i) => [field, i]));

const inSheetOrder = (candidates: readonly Numbered[]): readonly Numbered[] =>
  [...candidates].sort(
    (a, b) =>
      order.get(a.field)! - order.get(b.field)! ||
      a.evidence.page - b.evidence.page ||
      a.evidence.box.y - b.evidence.box.y,
  );
