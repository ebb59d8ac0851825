import type { Box } from "../glyphs/index.ts";
import type { Block, PrintedLine } from "./blocks.ts";
import { runTogether } from "./running-text.ts";
import { coverOf, type TextRow } from "./segment.ts";

/** A line further below the last than this (letter heights) begins a paragraph. */
const NEW_PARAGRAPH = 1.55;
const BULLET = /^(?:[•●▪■◦‣–—*-]\s|\(?\d{1,2}[.)]\s|\(?[a-zA-Z][.)]\s|[¹²³⁴⁵†‡§*])/;
const CAPTION = /^(?:fig(?:ure)?|table|drawing|illustration)\.?\s*\d/i;
const NOTE = /^(?:[*†‡§¹²³⁴⁵]|\d\)\s|notes?\b|\(\d\)\s)/i;

/** Lines without a second column as headings, paragraphs, captions and notes. */
export const paragraphsOf = (
  rows: readonly TextRow[],
  page: number,
  body: number,
  toPage: (cover: Box) => Box,
): readonly Block[] => {
  const right = Math.max(...rows.map((row) => row.segments.at(-1)!.to));
  const groups: TextRow[][] = [];
  rows.forEach((row, i) => {
    const above = rows[i - 1];
    if (above && goesOn(above, row, right)) groups.at(-1)!.push(row);
    else groups.push([row]);
  });
  return groups.map((group) => blockOf(group, page, body, toPage));
};

const wordsOf = (row: TextRow): string => row.segments.map(({ text }) => text).join(" ");

const goesOn = (above: TextRow, row: TextRow, right: number): boolean => {
  if (row.v - above.v > NEW_PARAGRAPH * row.size) return false;
  if (Math.abs(row.size - above.size) > 0.12 * row.size) return false;
  if (BULLET.test(wordsOf(row))) return false;
  const end = above.segments.at(-1)!;
  const start = row.segments[0]!.from;
  const short = right - end.to > 0.3 * (right - start);
  return !(short && /^[\p{Lu}\d]/u.test(wordsOf(row)) && !/[-,]$/.test(end.text));
};

const blockOf = (group: readonly TextRow[], page: number, body: number, toPage: (cover: Box) => Box): Block => {
  const running = runTogether(
    group.map((row) => {
      const line: PrintedLine = { page, text: wordsOf(row), box: toPage(coverOf(row.segments)) };
      return { text: line.text, line };
    }),
  );
  return { kind: kindOf(running.text, group[0]!.size, body), ...running };
};

const kindOf = (text: string, size: number, body: number): "heading" | "paragraph" | "caption" | "note" => {
  if (CAPTION.test(text)) return "caption";
  if (NOTE.test(text)) return "note";
  if (text.length > 90 || /[.:;]$/.test(text)) return "paragraph";
  return size > 1.08 * body || (text === text.toUpperCase() && /\p{L}{4}/u.test(text) && !/\d/.test(text))
    ? "heading"
    : "paragraph";
};
