import type { Box, PageSource } from "../glyphs/index.ts";

/** A printed line: what a person would point at. */
export interface PrintedLine {
  /** counted from 1 in the file */
  readonly page: number;
  readonly text: string;
  readonly box: Box;
}

/** Text that runs over one or more printed lines. `starts[i]` is where line i begins in the text. */
export interface RunningText {
  readonly text: string;
  readonly lines: readonly PrintedLine[];
  readonly starts: readonly number[];
}

export interface Cell extends RunningText {
  /** first column and the one after the last, counted from 0 */
  readonly from: number;
  readonly to: number;
}

export interface Row {
  readonly cells: readonly Cell[];
}

export type Block =
  | ({ readonly kind: "heading" | "paragraph" | "caption" | "note" } & RunningText)
  | { readonly kind: "table"; readonly columns: number; readonly rows: readonly Row[] };

export interface LaidOutPage {
  readonly number: number;
  /** the number printed on the page, where one is found */
  readonly printed?: string;
  readonly width: number;
  readonly height: number;
  readonly source: PageSource;
  /** in reading order */
  readonly blocks: readonly Block[];
}
