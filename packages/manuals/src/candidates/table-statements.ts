import { type Block, type Cell, lineAt, type PrintedLine, type Row } from "../layout/index.ts";
import { findValues } from "../values/index.ts";
import { unitPatterns } from "../values/unit-patterns.ts";
import { fieldRules } from "./field-rules.ts";
import { isModelName, namedIn } from "./models.ts";
import { sentencesOf } from "./sentences.ts";
import type { Statement } from "./statement.ts";

type Table = Extract<Block, { kind: "table" }>;

const UNIT = new RegExp(`^[([]?\\s*(?:${unitPatterns.map(({ pattern }) => pattern).join("|")})\\s*[)\\]]?$`, "iu");
const LABEL_UNIT = new RegExp(`[([,]\\s*(${unitPatterns.map(({ pattern }) => pattern).join("|")})\\s*[)\\]]?$`, "iu");
const BARE = /^[\d\s.,/⁄¼½¾⅛⅜⅝⅞⅓⅔–-]+$/;
const KEY = /^\(?(?:[A-Z]|\d{1,2})[.)]?$/;
export const MARK = /(?:[*†‡§]+|(?<!mm|in|cm|\bm|ft)[¹²³⁴⁵]+|\s\(?\d\))$/;

/** Notes at the foot of a page, by their mark. */
export type Notes = ReadonlyMap<string, { readonly text: string; readonly line: PrintedLine }>;

/** Labels of lines whose value is a word or a count. */
const WORD_LABEL = /anchors?\b|dowels?\b|\barms?\b|reinforc|armour|construction|column tops|design\b|style\b/i;

const isLabel = (text: string): boolean =>
  (/\p{L}{3}/u.test(text) && WORD_LABEL.test(text)) ||
  fieldRules.some(({ cue }) => new RegExp(cue.source, "i").test(text));

const namesCue = (text: string): boolean => isLabel(text) && !/\d/.test(text);

/** The rows of a table as statements: label and value, with the model of the column or row. */
export const statementsOfTable = (table: Table, models: readonly string[], notes: Notes): readonly Statement[] => {
  const head = headOf(table.rows, models);
  if (head?.kind === "models-in-rows") return inRows(table.rows.slice(head.rows), head.labels, models);
  const paired = !head && arePairs(table);
  return table.rows
    .slice(head ? head.rows : 0)
    .flatMap((row) => (paired ? pairsOf(row) : labelled(row, head?.names ?? new Map(), head?.unit, models)))
    .flatMap((statement) => [statement, ...noted(statement, notes)]);
};

type Head =
  | {
      readonly kind: "models-in-columns";
      readonly rows: number;
      readonly names: ReadonlyMap<number, string>;
      readonly unit: number | undefined;
    }
  | {
      readonly kind: "models-in-rows";
      readonly rows: number;
      readonly labels: ReadonlyMap<number, string>;
      readonly names?: never;
      readonly unit?: never;
    };

const headOf = (rows: readonly Row[], models: readonly string[]): Head | undefined => {
  for (const [i, row] of rows.slice(0, 4).entries()) {
    const known = row.cells.filter(
      ({ text }) => models.includes(text.trim()) || (isModelName(text) && /model|type/i.test(rows[i]!.cells[0]!.text)),
    );
    const unit = row.cells.find(({ text }) => /^units?$/i.test(text.trim()))?.from;
    const others = row.cells.filter((cell) => cell.from > 0 && !known.includes(cell) && cell.from !== unit);
    if ((known.length > 1 || (known.length === 1 && row.cells.length <= 3)) && others.length === 0)
      return {
        kind: "models-in-columns",
        rows: i + 1,
        unit,
        names: new Map(
          known.flatMap((cell) =>
            Array.from({ length: cell.to - cell.from }, (_, k) => [cell.from + k, cell.text.trim()] as const),
          ),
        ),
      };
    if (unit !== undefined) return { kind: "models-in-columns", rows: i + 1, unit, names: new Map() };
    const labels = row.cells.filter((cell) => cell.from > 0 && namesCue(cell.text));
    const below = rows.slice(i + 1);
    const named = below.filter(
      ({ cells }) => cells[0]?.from === 0 && (models.includes(cells[0].text.trim()) || isModelName(cells[0].text)),
    );
    if (labels.length >= 2 && named.length >= 1 && named.length >= 0.6 * below.length)
      return { kind: "models-in-rows", rows: i + 1, labels: new Map(labels.map((cell) => [cell.from, cell.text])) };
  }
  return undefined;
};

const arePairs = ({ rows, columns }: Table): boolean => {
  if (columns < 4 || columns % 2 !== 0) return false;
  const good = rows.filter(
    ({ cells }) =>
      cells.filter(
        ({ from, text }) => from % 2 === 0 && (namesCue(text) || (/\p{L}{3}/u.test(text) && !/\d/.test(text))),
      ).length >= 2,
  );
  return good.length >= 0.5 * rows.length;
};

const pairsOf = ({ cells }: Row): readonly Statement[] =>
  cells.flatMap((cell) => {
    const value = cells.find(({ from }) => from === cell.from + 1);
    return cell.from % 2 === 0 && value ? [statement(cell.text, value.text, value, [])] : [];
  });

const statement = (label: string, value: string, cell: Cell, models: readonly string[]): Statement => {
  const clean = label.replace(MARK, "").trim();
  const unit = LABEL_UNIT.exec(clean);
  const head = `${clean.replace(/[:\s]+$/, "")}: `;
  const said = value.replace(MARK, "").trim();
  const whole = unit && BARE.test(said) ? `${said} ${unit[1]}` : said;
  return { text: head + whole, from: head.length, lineAt: () => cell.lines[0]!, models, lead: [], form: "cell" };
};

/** A cell that says everything itself: text that only happens to stand beside other text. */
const alone = (cell: Cell): readonly Statement[] =>
  sentencesOf(cell.text).map(({ from, text }) => ({
    text,
    from: 0,
    lineAt: (place) => lineAt(cell, from + place),
    models: [],
    lead: [],
    form: "sentence",
  }));

const labelled = (
  { cells }: Row,
  names: ReadonlyMap<number, string>,
  unitColumn: number | undefined,
  models: readonly string[],
): readonly Statement[] => {
  const keyed = cells.length > 1 && KEY.test(cells[0]!.text.trim()) ? 1 : 0;
  const label = cells[keyed];
  if (!label || cells.length - keyed < 2)
    return label
      ? [{ text: label.text, from: 0, lineAt: () => label.lines[0]!, models: [], lead: [], form: "sentence" }]
      : [];
  const rest = cells.slice(keyed + 1);
  if (label.text.length > 40 && findValues(label.text).length > 0) return cells.flatMap(alone);
  const unitCell = rest.find((cell) => cell.from === unitColumn || (rest.length > 1 && UNIT.test(cell.text.trim())));
  const unit = unitCell?.text.replace(/[()[\]]/g, "").trim();
  return rest
    .filter((cell) => cell !== unitCell)
    .map((cell) => {
      const spanned = Array.from({ length: cell.to - cell.from }, (_, i) => names.get(cell.from + i)).filter(
        (n) => n !== undefined,
      );
      const scope = spanned.length > 0 && spanned.length < models.length ? spanned : [];
      const value = unit && UNIT.test(unit) && BARE.test(cell.text.trim()) ? `${cell.text.trim()} ${unit}` : cell.text;
      return statement(label.text, value, cell, scope);
    });
};

const inRows = (
  rows: readonly Row[],
  labels: ReadonlyMap<number, string>,
  models: readonly string[],
): readonly Statement[] =>
  rows.flatMap(({ cells }) => {
    const name = cells[0]?.text.trim() ?? "";
    const scope = models.length > 1 ? (models.includes(name) ? [name] : namedIn(name, models).map((m) => m.name)) : [];
    return cells.flatMap((cell) => {
      const label = labels.get(cell.from);
      return label === undefined ? [] : [statement(label, cell.text, cell, scope)];
    });
  });

/** A note below the table speaks of the row that bears its mark. */
const noted = (base: Statement, notes: Notes): readonly Statement[] => {
  const printed = base.lineAt(0).text;
  return [...notes].flatMap(([mark, note]) => {
    const bears = printed.split("   ").some((cell) => MARK.exec(cell.trim())?.[0].trim() === mark);
    if (!bears) return [];
    const head = base.text.slice(0, base.from);
    return [
      {
        text: head + note.text,
        from: head.length,
        lineAt: () => note.line,
        models: [],
        lead: [],
        form: "note" as const,
      },
    ];
  });
};
