import { type FoundValue, findValues } from "../values/index.ts";
import type { Claim } from "./claim.ts";
import { claimOf } from "./claim-of.ts";
import { type Cue, cuesIn } from "./cues.ts";
import type { FieldName } from "./field-names.ts";
import type { FieldRule } from "./field-rules.ts";
import { sideOf } from "./size-sides.ts";
import type { Statement } from "./statement.ts";
import { mentionsIn } from "./subjects.ts";

/** Letters between a word and its value beyond which they do not belong together. */
const FAR = 110;

const NOT_NEAR = 55;

/** Another value of the same kind between a word and its value. */
const CROSSING = 45;

/** The numbers of a statement, each with the field whose word stands nearest. */
export const claimNumbers = (statement: Statement): readonly Claim[] => {
  const { text } = statement;
  const values = findValues(text).filter((value) => value.from >= statement.from && !isShare(value, text));
  if (values.length === 0) return [];
  const mentions = mentionsIn(text);
  const cues = cuesIn(statement, mentions);
  return values.flatMap((value) => {
    const side = sideOf(value, statement, mentions);
    if (value.size && !side) return [];
    if (side) return [claimOf(side.field, value, statement, side.subject === "led" ? "likely" : "sure", [])];
    return nearest(value, values, cues, statement);
  });
};

/** A load of one arm or axle is not the lift's. */
const isShare = (value: FoundValue, text: string): boolean =>
  value.dimension === "force" &&
  /^\.?\)? ?\(?(?:per|for each|each|an?) (?:arm|axle|wheel|pad)/i.test(text.slice(value.to));

const nearest = (
  value: FoundValue,
  values: readonly FoundValue[],
  cues: readonly Cue[],
  statement: Statement,
): readonly Claim[] => {
  const costs = cues
    .filter(({ rule }) => rule.dimension === value.dimension || isPercentOfSlope(rule, value))
    .map((cue) => ({ cue, cost: costOf(cue, value, values, statement) }))
    .sort((a, b) => a.cost - b.cost);
  const best = costs[0];
  if (!best || best.cost > FAR) return slabOf(value, statement);
  const shared = costs.filter(({ cue }) => sharesPlace(best.cue, cue, cues, statement.text));
  const rival = costs.find((other) => !shared.includes(other) && other.cue.rule.field !== best.cue.rule.field);
  const reasons = [
    ...(best.cue.subject === "led" ? ["the line itself does not say what it speaks of; the text before it does"] : []),
    ...(statement.form === "sentence" && best.cost > NOT_NEAR ? ["the words for it stand far from the figure"] : []),
    ...(best.cue.rule.field === "columnsInside" && !/inside|clear|drive/i.test(statement.text)
      ? ["the page does not say whether it is measured inside or between centres"]
      : []),
    ...(CONDITION.test(statement.text) ? ["the sentence sets a condition"] : []),
    ...(rival && rival.cost - best.cost < 4 ? [`it may also be meant for ${rival.cue.rule.field}`] : []),
  ];
  const fields = new Set(shared.map(({ cue }) => cue.rule.field));
  return [...fields].map((field) => ({
    ...claimOf(field, value, statement, reasons.length > 0 ? "likely" : "sure", reasons),
    named: [best.cue.from, best.cue.to] as const,
  }));
};

/** Words that make a figure hold only sometimes. */
const CONDITION = /\b(?:if|unless|may be used|in case|except|optional(?:ly)?|seismic|instead|recommended)\b/i;

/** "6 in. concrete slab": a thickness without the word, right before what is thick. */
const slabOf = (value: FoundValue, statement: Statement): readonly Claim[] =>
  value.dimension === "length" &&
  /^[- ](?:thick )?(?:reinforced |level )?(?:concrete|slab|floor(?! ?plate))/i.test(statement.text.slice(value.to)) &&
  !/(?:edge|rim) of/i.test(statement.text)
    ? [claimOf("asks.thickness", value, statement, "likely", ["the page does not say that it is the thickness"])]
    : [];

const isPercentOfSlope = (rule: FieldRule, value: FoundValue): boolean =>
  rule.field === "asks.slope" && value.dimension === "number";

const costOf = (cue: Cue, value: FoundValue, values: readonly FoundValue[], { text, form }: Statement): number => {
  const before = cue.to <= value.from;
  const [from, to] = before ? [cue.to, value.from] : [value.to, cue.from];
  const between = text.slice(from, Math.max(from, to));
  const astray = /\b(?:extend\w*|beyond|square|apart from|spaced|larger|oversized?)\b/i.test(between) ? FAR : 0;
  const placed = !before && /^\.? ?(?:or more |or greater |minimum )?(?:away )?(?:from|to|of) /i.test(between) ? 8 : 0;
  const crossed = values.filter((v) => v !== value && v.dimension === value.dimension && v.from >= from && v.to <= to);
  const breaks = [...between.matchAll(/[,;:]|\band\b/g)].map(
    ([mark]) => BREAKS[before ? "before" : "after"][mark] ?? 0,
  );
  const broken = form === "cell" ? 0 : breaks.reduce((sum, cost) => sum + cost, 0);
  return between.length + CROSSING * crossed.length + broken + astray - placed + (before ? 0 : 2);
};

/** What a stop between a word and its value costs, in letters; after the value it parts more. */
const BREAKS: Readonly<Record<"before" | "after", Readonly<Record<string, number>>>> = {
  before: { ",": 6, ";": 30, ":": 0, and: 6 },
  after: { ",": 20, ";": 60, ":": 30, and: 20 },
};

/** Words for places in one list: the edge, any joint or a crack share the distance. */
const PLACES: readonly FieldName[] = ["asks.edge", "asks.joint", "asks.crack", "asks.wall"];

const LINK = /^(?:[\s,/&]|\b(?:and|or|any|a|an|the|other|of|slab|concrete|existing|nearest|control|expansion)\b)*$/i;

/** The cue itself, and the places listed with it, one next to the other. */
const sharesPlace = (best: Cue, cue: Cue, cues: readonly Cue[], text: string): boolean => {
  if (cue === best) return true;
  if (!PLACES.includes(best.rule.field) || !PLACES.includes(cue.rule.field)) return false;
  const [first, last] = best.from < cue.from ? [best, cue] : [cue, best];
  const chain = cues
    .filter((c) => PLACES.includes(c.rule.field) && c.from >= first.from && c.to <= last.to)
    .sort((a, b) => a.from - b.from);
  return chain.every((c, i) => i === 0 || LINK.test(text.slice(chain[i - 1]!.to, c.from)));
};
