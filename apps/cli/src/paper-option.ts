import type { Paper } from "@floorworthy/papers";
import type { Command } from "commander";
import { dayOf } from "./day-option.ts";

export interface PaperOptions {
  readonly paper: string;
  readonly date?: string;
}

/** What every command that writes a sheet asks about the paper. */
export const withPaper = (command: Command): Command =>
  command
    .option("--paper <size>", "letter or a4", "letter")
    .option("--date <date>", "date to print on it, YYYY-MM-DD (today unless given)");

/** The paper asked for, or undefined after the mistake has been printed. */
export const paperOf = (wanted: string): Paper | undefined => {
  if (wanted === "letter" || wanted === "a4") return wanted;
  console.error(`--paper ${wanted}: write letter or a4.`);
  return undefined;
};

/** Paper and day, or undefined after every mistake in them has been printed. */
export const paperAndDay = (options: PaperOptions): { readonly paper: Paper; readonly date: string } | undefined => {
  const paper = paperOf(options.paper);
  const date = dayOf("--date", options.date);
  return paper && date ? { paper, date } : undefined;
};
