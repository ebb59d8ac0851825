import { printInUnit } from "@floorworthy/engine/quantities";
import { type FoundValue, findValues } from "../values/index.ts";
import type { Confidence } from "./candidate.ts";
import type { Claim } from "./claim.ts";
import type { FieldName } from "./field-names.ts";
import { type FieldRule, fieldRules, ruleOf } from "./field-rules.ts";
import type { Statement } from "./statement.ts";
import { type Mention, mentionsIn, type Subject } from "./subjects.ts";
import { remarksOn } from "./wrong-words.ts";

/** A word that names a field, as it stands in a statement. */
interface Cue {
  readonly rule: FieldRule;
  readonly from: number;
  readonly to: number;
  /** whether its subject is named with it, or only by what stands before the statement */
  readonly subject: "named" | "led" | "needless";
}

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

const cuesIn = (statement: Statement, mentions: readonly Mention[]): readonly Cue[] => {
  const { text } = statement;
  const cues = fieldRules.flatMap((rule) => {
    if (rule.unless?.test(text) || (rule.needs && !rule.needs.test(text))) return [];
    return [...text.matchAll(rule.cue)].flatMap((match): readonly Cue[] => {
      const [from, to] = [match.index, match.index + match[0].length];
      if (!rule.about) return [{ rule, from, to, subject: "needless" }];
      const subject = subjectOf(from, to, text, mentions);
      if (subject !== undefined) return rule.about.includes(subject) ? [{ rule, from, to, subject: "named" }] : [];
      const led = rule.about.some((wanted) => statement.lead.includes(wanted)) || rule.alone?.test(text);
      return led ? [{ rule, from, to, subject: "led" }] : [];
    });
  });
  return cues.filter((a) => !cues.some((b) => b.from <= a.from && b.to >= a.to && b.to - b.from > a.to - a.from));
};

/** What a word is about: named in it, "of" something, else the last thing named before it, else the first after. */
const subjectOf = (from: number, to: number, text: string, mentions: readonly Mention[]): Subject | undefined => {
  const within = mentions.find((m) => m.from < to && m.to > from);
  if (within) return within.subject;
  const next = mentions.find((m) => m.from >= to);
  if (next && /^ of (?:the |a |one |each |any |every |this )*(?:drilled |existing )?$/i.test(text.slice(to, next.from)))
    return next.subject;
  return (mentions.findLast((m) => m.to <= from) ?? next)?.subject;
};

/** Sides of a size: a plate's width, depth and thickness; an anchor's diameter and length. */
const sideOf = (
  value: FoundValue,
  statement: Statement,
  mentions: readonly Mention[],
): { readonly field: FieldName; readonly subject: "named" | "led" } | undefined => {
  if (!value.size) return undefined;
  const { group, side, sides } = value.size;
  const near = (mentions.findLast((m) => m.to <= group) ?? mentions.find((m) => m.from >= group))?.subject;
  const subject = near ?? statement.lead.find((s) => s === "plate" || s === "anchor");
  const how = near ? "named" : "led";
  if (/(?:hole|bolt) (?:pattern|spacing|layout)/i.test(statement.text) && subject !== "concrete") {
    const field = (["anchors.patternAcross", "anchors.patternAlong"] as const)[side];
    return field && { field, subject: how };
  }
  if (subject === "plate") {
    const field = (["base.width", "base.depth", "base.thickness"] as const)[side];
    return field && { field, subject: how };
  }
  if (subject === "anchor" && sides === 2) {
    const field = (["anchors.product.diameter", "anchors.product.length"] as const)[side];
    return field && { field, subject: how };
  }
  if (subject === "concrete" && sides === 3 && side === 2) return { field: "asks.thickness", subject: "led" };
  return undefined;
};

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

const claimOf = (
  field: FieldName,
  value: FoundValue,
  statement: Statement,
  trusted: Confidence,
  reasons: readonly string[],
): Claim => {
  const remarks = remarksOn(field, value, statement.text);
  const { usual, dimension } = ruleOf(field) ?? { usual: [0, Number.POSITIVE_INFINITY], dimension: value.dimension };
  const odd = value.high < usual[0] || value.low > usual[1];
  const comma = value.how.includes("decimal-comma");
  return {
    field,
    said: value,
    from: value.from,
    to: value.to,
    confidence: odd || remarks.length > 0 ? "doubtful" : comma && trusted === "sure" ? "likely" : trusted,
    reasons: [...reasons, ...(comma ? ["a comma was read as a decimal point"] : [])],
    remarks: [
      ...remarks,
      ...(odd
        ? [
            {
              code: "unusual-value" as const,
              message: `${typeof value.written === "string" ? value.written : value.written.high} is unusual for this.`,
              hint: `Look at the page; usual is ${printInUnit(Number(usual[0].toPrecision(3)), unitOfBase(dimension))} to ${printInUnit(Number(usual[1].toPrecision(3)), unitOfBase(dimension))}.`,
            },
          ]
        : []),
    ],
  };
};

const unitOfBase = (dimension: FieldRule["dimension"]) =>
  dimension === "length"
    ? "mm"
    : dimension === "force"
      ? "N"
      : dimension === "stress"
        ? "MPa"
        : dimension === "moment"
          ? "N·mm"
          : dimension === "time"
            ? "d"
            : "";
