/** A rectangle on a page as it is shown: points from the upper left corner, y down. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** Which way a text runs, degrees clockwise from left-to-right. */
export type Direction = 0 | 90 | 180 | 270;

/** Glyphs of one font and size that the file sets in one go. */
export interface GlyphRun {
  readonly text: string;
  /** where the first glyph stands on its baseline, points from the page's upper left corner */
  readonly x: number;
  readonly y: number;
  /** length along the text and height of the letters, points */
  readonly width: number;
  readonly size: number;
  readonly direction: Direction;
}

/** Where the glyphs of a page came from: set as text, recognised from its picture, or not there at all. */
export type PageSource = "text" | "recognised" | "picture";

export interface GlyphPage {
  /** counted from 1 in the file */
  readonly number: number;
  /** points, after the page's own turning */
  readonly width: number;
  readonly height: number;
  readonly source: PageSource;
  readonly runs: readonly GlyphRun[];
}

export interface Trouble {
  readonly code:
    | "not-a-pdf"
    | "encrypted"
    | "broken"
    | "too-large"
    | "too-many-pages"
    | "too-slow"
    | "too-much-memory"
    | "no-text";
  /** what is wrong, one sentence */
  readonly message: string;
  /** what to do, one sentence */
  readonly hint: string;
}

export type GlyphReading =
  | { readonly ok: true; readonly pages: readonly GlyphPage[]; readonly unread: readonly number[] }
  | { readonly ok: false; readonly trouble: Trouble };
