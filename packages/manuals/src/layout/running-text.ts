import type { PrintedLine, RunningText } from "./blocks.ts";
import { joinLines } from "./plain-letters.ts";

/** Printed lines as one text, words broken at line ends made whole. */
export const runTogether = (pieces: readonly { readonly text: string; readonly line: PrintedLine }[]): RunningText => {
  let text = "";
  const starts: number[] = [];
  for (const piece of pieces) {
    text = joinLines(text, piece.text);
    starts.push(text.length - piece.text.length);
  }
  return { text, starts, lines: pieces.map(({ line }) => line) };
};

/** The printed line in which a place of the text stands. */
export const lineAt = (running: RunningText, place: number): PrintedLine =>
  running.lines[
    Math.max(
      0,
      running.starts.findLastIndex((start) => start <= place),
    )
  ]!;
