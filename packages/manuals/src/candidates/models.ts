import type { LaidOutPage, Row } from "../layout/index.ts";

/** A model's name: letters and figures, as on a data plate. */
const NAME = "(?:[A-Z]{1,6}[- ]?\\d{1,5}[A-Z0-9]*(?:-[A-Z0-9]+)?|\\d{1,5}[A-Z]{1,4}(?:-[A-Z0-9]+)?)";
const AFTER_MODEL = new RegExp(
  `(?:\\b[Mm]odels?|\\b[Tt]ypes?|\\b[Vv]ersions?|\\b[Ss]eries|\\bMODELS?)(?: (?:[Nn]o|[Nn]umber|[Nn]os)\\.?)?:?\\s+((?:${NAME})(?:\\s*(?:,\\s*and|,|and|&|/|or|\\+)\\s*(?:${NAME}))*)(?![\\p{L}\\d])`,
  "gu",
);
const ALONE = new RegExp(`^${NAME}$`, "u");
const ONE = new RegExp(NAME, "gu");
/** Names of screws, strengths, standards and the like, which look like models. */
const NOT_A_MODEL = /^(?:M\d{1,2}|C\d{2}|ISO|EN|DIN|ASTM|ACI|IP|VG|SAE|HP|AC|DC|A\d|B\d{2}|NO|FIG|PAGE|REV)[- ]?\d*$/i;

export const isModelName = (text: string): boolean => ALONE.test(text.trim()) && !NOT_A_MODEL.test(text.trim());

/** Names after the word model, and names at the head of a table's columns or rows under the word model. */
export const modelsOf = (pages: readonly LaidOutPage[]): readonly string[] => {
  const counted = new Map<string, number>();
  const add = (name: string) => counted.set(name, (counted.get(name) ?? 0) + 1);
  for (const { blocks } of pages)
    for (const block of blocks) {
      const texts =
        block.kind === "table" ? block.rows.flatMap(({ cells }) => cells.map(({ text }) => text)) : [block.text];
      for (const text of texts)
        for (const [, list] of text.matchAll(AFTER_MODEL))
          for (const [name] of list!.matchAll(ONE)) if (isModelName(name)) add(name);
      if (block.kind !== "table") continue;
      for (const name of [...inHead(block.rows), ...inFirstColumn(block.rows)]) add(name);
    }
  return [...counted.keys()];
};

const HEADED = /^(?:models?|types?|technical data|specifications?|description|item|data|)$/i;

/** Two or more names at the head of the columns. */
const inHead = (rows: readonly Row[]): readonly string[] => {
  const first = rows[0]?.cells ?? [];
  const headed = HEADED.test(first[0]?.text ?? "") || (first[0]?.from ?? 0) > 0;
  const names = first.slice(first[0]?.from === 0 ? 1 : 0).filter(({ text }) => isModelName(text));
  return headed && names.length >= 2 ? names.map(({ text }) => text.trim()) : [];
};

/** Names down the first column, under the word model. */
const inFirstColumn = (rows: readonly Row[]): readonly string[] => {
  const [head, ...rest] = rows.map(({ cells }) => cells[0]);
  if (head?.from !== 0 || !/^(?:models?|types?)$/i.test(head.text.trim())) return [];
  return rest.flatMap((cell) => (cell?.from === 0 && isModelName(cell.text) ? [cell.text.trim()] : []));
};

/** The models a text names, where it names them. */
export const namedIn = (
  text: string,
  models: readonly string[],
): readonly { readonly name: string; readonly at: number }[] =>
  models
    .flatMap((name) => {
      const pattern = new RegExp(
        `(?<![\\p{L}\\d-])${name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")}(?![\\p{L}\\d])(?!-\\p{Lu})`,
        "gu",
      );
      return [...text.matchAll(pattern)].map(({ index }) => ({ name, at: index }));
    })
    .sort((a, b) => a.at - b.at);
