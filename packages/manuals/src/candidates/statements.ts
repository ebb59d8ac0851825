import { type Block, type LaidOutPage, lineAt } from "../layout/index.ts";
import { findValues } from "../values/index.ts";
import { namedIn } from "./models.ts";
import { sentencesOf } from "./sentences.ts";
import type { Statement } from "./statement.ts";
import { mentionsIn, type Subject } from "./subjects.ts";
import { type Notes, statementsOfTable } from "./table-statements.ts";

const NOTE_MARK = /^([*†‡§]+|[¹²³⁴⁵]|\(?\d\))\s*/;

/** What the last heading spoke of; it holds until the next one, over the page's end. */
export interface UnderHeading {
  models: readonly string[];
  lead: readonly Subject[];
}

/** Everything a page says, piece by piece. `heading` is kept up to date. */
export const statementsOf = (
  page: LaidOutPage,
  models: readonly string[],
  heading: UnderHeading,
): readonly Statement[] => {
  const notes = notesOf(page.blocks);
  return page.blocks.flatMap((block) => {
    if (block.kind === "table") return statementsOfTable(block, models, notes);
    if (isHeading(block)) {
      heading.models = scopeOf(block.text, models);
      heading.lead = subjectsOf(block.text);
      return block.kind === "heading" ? [] : ofRunning(block, heading, models);
    }
    return ofRunning(block, heading, models);
  });
};

const subjectsOf = (text: string): readonly Subject[] => mentionsIn(text).map(({ subject }) => subject);

/** The models a heading names, when it does not name them all. */
const scopeOf = (text: string, models: readonly string[]): readonly string[] => {
  const named = [...new Set(namedIn(text, models).map(({ name }) => name))];
  return named.length < models.length ? named : [];
};

const isHeading = (block: Exclude<Block, { kind: "table" }>): boolean =>
  block.kind === "heading" ||
  (block.text.length < 60 && !/[.;:,]$/.test(block.text) && findValues(block.text).length === 0);

const ofRunning = (
  block: Exclude<Block, { kind: "table" }>,
  heading: UnderHeading,
  models: readonly string[],
): readonly Statement[] => {
  let before: readonly Subject[] = [];
  return sentencesOf(block.text).map(({ from, text }) => {
    const said: Statement = {
      text: withUnit(text),
      from: 0,
      lineAt: (place) => lineAt(block, from + place),
      models: namedIn(text, models).length > 0 ? [] : heading.models,
      lead: [...before, ...heading.lead],
      form: block.kind === "note" ? "note" : "sentence",
    };
    before = subjectsOf(text);
    return said;
  });
};

const UNIT_BEFORE = /\((in\.?|inches|mm|cm|ft|psi|MPa|lbs?|kg|N·?m|ft-?lbs?)\) ?[:=]? ?[\d][\d.,/ -]*$/i;

/** "Concrete thickness (in.): 4 1/4" with its unit behind the figure. */
const withUnit = (text: string): string => {
  const unit = UNIT_BEFORE.exec(text.replace(/\.$/, ""))?.[1];
  return unit === undefined ? text : `${text.replace(/\.$/, "")} ${unit}`;
};

const notesOf = (blocks: readonly Block[]): Notes => {
  const notes = new Map<string, { text: string; line: ReturnType<typeof lineAt> }>();
  for (const block of blocks) {
    const mark = block.kind === "table" ? undefined : NOTE_MARK.exec(block.text);
    if (mark && block.kind !== "table")
      notes.set(mark[1]!, { text: block.text.slice(mark[0].length), line: block.lines[0]! });
  }
  return notes;
};
