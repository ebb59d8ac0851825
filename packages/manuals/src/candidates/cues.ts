import { type FieldRule, fieldRules } from "./field-rules.ts";
import type { Statement } from "./statement.ts";
import type { Mention, Subject } from "./subjects.ts";

/** A word that names a field, as it stands in a statement. */
export interface Cue {
  readonly rule: FieldRule;
  readonly from: number;
  readonly to: number;
  /** whether its subject is named with it, or only by what stands before the statement */
  readonly subject: "named" | "led" | "needless";
}

export const cuesIn = (statement: Statement, mentions: readonly Mention[]): readonly Cue[] => {
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
