/** A block of the sheet's notes: a heading and its lines. `box` lines get a square to tick. */
export interface Note {
  readonly heading: string;
  readonly lines: readonly string[];
  readonly mark: "dot" | "box";
}

export const note = (heading: string, lines: readonly (string | undefined)[], mark: Note["mark"] = "dot"): Note => ({
  heading,
  lines: lines.filter((line): line is string => line !== undefined && line !== ""),
  mark,
});
