import { unable } from "@floorworthy/engine/quantities";
import { drawingToSvg, sheets } from "@floorworthy/papers";
import type { Units } from "./messages.ts";
import { assessed, withJob } from "./with-job.ts";

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
  const sheet = sheets.find((each) => each.name === name);
  const drawn = withJob(text, units, (job) =>
    sheet ? sheet.draw(job, assessed(job), { date, paper }) : unable("sheet", "There is no such sheet."),
  );
  return drawn.ok
    ? { kind: "drawn", pages: drawn.value.map(drawingToSvg), description: drawn.value[0]?.description ?? "" }
    : { kind: "refused", words: drawn.why };
};
