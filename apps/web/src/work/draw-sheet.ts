import { assess } from "@floorworthy/assess";
import { isUnable } from "@floorworthy/engine/quantities";
import { readJob } from "@floorworthy/job";
import { drawingToSvg, sheets } from "@floorworthy/papers";
import type { Units } from "./messages.ts";

export interface SheetEntry {
  readonly name: string;
  readonly title: string;
  readonly reader: string;
}

export type SheetPicture =
  | { readonly kind: "drawn"; readonly pages: readonly string[]; readonly description: string }
  | { readonly kind: "refused"; readonly words: string };

export const listSheets = (): readonly SheetEntry[] =>
  sheets.map(({ name, title, reader }) => ({ name, title, reader }));

/** A sheet of the job as it stands on this screen, also without a connection. */
export const drawSheet = (
  text: string,
  name: string,
  units: Units,
  date: string,
  paper: "letter" | "a4",
): SheetPicture => {
  const reading = readJob(text);
  if (!reading.ok) return { kind: "refused", words: "The job has mistakes that must be mended first." };
  const job = { ...reading.job, units };
  const sheet = sheets.find((each) => each.name === name);
  if (!sheet) return { kind: "refused", words: "There is no such sheet." };
  const pages = sheet.draw(job, assess(job), { date, paper });
  return isUnable(pages)
    ? { kind: "refused", words: pages.reason }
    : { kind: "drawn", pages: pages.map(drawingToSvg), description: pages[0]?.description ?? "" };
};
